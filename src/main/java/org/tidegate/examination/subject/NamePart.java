package org.tidegate.examination.subject;

import java.util.EnumSet;
import org.tidegate.rules.WordKind;

/**
 * Short words that one language uses around the facts and another has for the last part of a name: Vo Tan Loc, Gia Huy Ho,
 * Thiago Nogueira Sá. Told by how they stand: capitalised, behind two words of a name, right before the time.
 */
final class NamePart {

    private static final int LONGEST = 3;

    private static final int MARK = 4;

    private static final long AROUND_FACTS = Meaning.mask(EnumSet.of(
            WordKind.TIME_CUE,
            WordKind.DATE_CUE,
            WordKind.NAME_CUE,
            WordKind.OTHER_TIME,
            WordKind.HOUR_UNIT,
            WordKind.RESULT,
            WordKind.TITLE,
            WordKind.SUFFIX,
            WordKind.PREFIX,
            WordKind.NOTICE,
            WordKind.BUSINESS));

    private NamePart() {}

    static boolean last(Line line, int at) {
        Meaning m = line.meaning(at);
        boolean telling = (m.kinds() & AROUND_FACTS) != 0
                || m.weekday() > 0
                || m.dayOffset() != null
                || m.is(WordKind.MORNING)
                || m.is(WordKind.EVENING)
                || m.clinic().isPresent();
        return !m.unknown() && !telling && shaped(line, at);
    }

    /** Stands like the last part of a name, whatever it means. */
    static boolean shaped(Line line, int at) {
        return line.isWord(at)
                && line.token(at).text().length() <= LONGEST
                && capitalised(line, at)
                && capitalised(line, at - 1)
                && line.meaning(at - 1).unknown()
                && line.isWord(at - 2)
                && line.looksLikeTime(at + 1);
    }

    /** With an accent, as hardly a short word around the facts is written: Sá, Lê. */
    static boolean accentedLast(Line line, int at) {
        boolean named =
                last(line, at) || line.isWord(at) && line.token(at).text().length() == 2 && shaped(line, at);
        return named && line.token(at).text().chars().anyMatch(c -> c >= 0x80);
    }

    /** Stands large right behind a large unknown word, hyphen or not: June Day, Noreen Guinto-Bay. */
    static boolean behindName(Line line, int at) {
        int before = line.isSign(at - 1, "-") && line.glued(at - 1) && line.glued(at) ? at - 2 : at - 1;
        return capitalised(line, at)
                && capitalised(line, before)
                && (line.meaning(before).unknown() || line.meaning(before).month() > 0);
    }

    /** Kit Hollings, Om Prakash: a given name that is another word elsewhere; "my wife" only before a whole name. */
    static boolean given(Line line, int at) {
        boolean plain = line.is(at, WordKind.GIVEN_NAME)
                && capitalised(line, at)
                && line.token(at).text().equalsIgnoreCase(line.token(at).key());
        boolean surname =
                capitalised(line, at + 1) && (line.meaning(at + 1).unknown() || line.is(at + 1, WordKind.PARTICLE));
        boolean wholeName = capitalised(line, at + 2) && line.meaning(at + 2).unknown();
        return plain && surname && !(wholeName && line.is(at, WordKind.NAME_CUE));
    }

    /** Kit, Fran: a word elsewhere, yet written large before a word that is none. */
    static boolean beginsLarge(Line line, int at) {
        return capitalised(line, at)
                && line.token(at).text().length() >= LONGEST
                && line.meaning(at).wordOfMail()
                && !line.is(at, WordKind.RESULT)
                && capitalised(line, at + 1)
                && line.meaning(at + 1).unknown();
    }

    /** Mark Marsh: no mark has so many letters. */
    static boolean markAndName(Line line, int at) {
        return line.is(at, WordKind.MARK_LABEL)
                && !line.is(at, WordKind.LABEL)
                && line.isWord(at + 1)
                && line.token(at + 1).text().length() > MARK
                && line.meaning(at + 1).unknown();
    }

    /** Written as a short form of a given name, whatever it means: Ma. Theresa. */
    static boolean cutShort(Line line, int at) {
        return line.isWord(at)
                && line.token(at).text().length() <= LONGEST
                && capitalised(line, at)
                && line.isSign(at + 1, ".")
                && line.glued(at + 1)
                && capitalised(line, at + 2)
                && line.meaning(at + 2).unknown();
    }

    /** First letter large, second small. */
    private static boolean capitalised(Line line, int at) {
        if (!line.isWord(at)) {
            return false;
        }
        String text = line.token(at).text();
        return text.length() > 1 && Character.isUpperCase(text.charAt(0)) && Character.isLowerCase(text.charAt(1));
    }
}
