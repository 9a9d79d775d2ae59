package org.tidegate.examination.subject;

import java.util.EnumSet;
import org.tidegate.rules.WordKind;

/**
 * Short words that one language uses around the facts and another has for the last part of a name: Vo Tan Loc, Gia Huy Ho,
 * Thiago Nogueira Sá. Told by how they stand: capitalised, behind two words of a name, right before the time.
 */
final class NamePart {

    private static final int LONGEST = 3;

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

    /** First letter large, second small. */
    private static boolean capitalised(Line line, int at) {
        if (!line.isWord(at)) {
            return false;
        }
        String text = line.token(at).text();
        return text.length() > 1 && Character.isUpperCase(text.charAt(0)) && Character.isLowerCase(text.charAt(1));
    }
}
