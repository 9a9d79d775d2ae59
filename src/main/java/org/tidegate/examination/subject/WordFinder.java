package org.tidegate.examination.subject;

import java.util.EnumSet;
import org.tidegate.rules.WordKind;

/** What else a word can be: a claimed result, a filler; and what it costs to leave a token unread. */
final class WordFinder implements Finder {

    private static final long AROUND = Meaning.mask(EnumSet.of(
            WordKind.FILLER,
            WordKind.TITLE,
            WordKind.PREFIX,
            WordKind.NAME_CUE,
            WordKind.TIME_CUE,
            WordKind.DATE_CUE,
            WordKind.OTHER_TIME,
            WordKind.LABEL,
            WordKind.RESULT,
            WordKind.BIRTH_LABEL,
            WordKind.REFERENCE_LABEL,
            WordKind.MARK_LABEL,
            WordKind.BUSINESS,
            WordKind.NOTICE,
            WordKind.VESSEL,
            WordKind.HOUR_UNIT,
            WordKind.MINUTE_UNIT));

    @Override
    public void find(Line line, int at, Candidates out) {
        out.add(Candidate.skip(at, at + 1, unread(line, at)));
        int claim = line.length(at, WordKind.RESULT);
        if (claim > 0) {
            out.add(new Candidate(
                    Candidate.Field.CLAIM, at, at + claim, -0.05, new Candidate.Words(line.text(at, at + claim))));
        }
        int ship = line.length(at, WordKind.VESSEL);
        if (ship > 0
                && line.isWord(at + ship)
                && Character.isUpperCase(line.token(at + ship).text().codePointAt(0))) {
            out.add(Candidate.skip(at, at + ship + 1, 0.1));
        }
        for (Lexicon.Match m : line.matches(at)) {
            if (m.length() > 1 && means(m.meaning())) {
                out.add(Candidate.skip(at, at + m.length(), 0));
            }
        }
    }

    private static double unread(Line line, int at) {
        Token t = line.token(at);
        if (t.isNumber()) {
            return 0.5;
        }
        if (!t.isWord()) {
            return 0;
        }
        if (NamePart.last(line, at) || NamePart.given(line, at)) {
            return 1;
        }
        Meaning m = line.meaning(at);
        boolean initial = t.text().length() == 1
                && line.isSign(at + 1, ".")
                && line.glued(at + 1)
                && line.isWord(at + 2)
                && !m.is(WordKind.TITLE);
        if (initial) {
            return 0.6;
        }
        if (means(m)) {
            return m.is(WordKind.PARTICLE) ? 0.1 : 0;
        }
        if (m.month() > 0 && Character.isUpperCase(t.text().codePointAt(0))) {
            return 1.3;
        }
        if (m.calendar() || m.number() >= 0 || m.is(WordKind.SUFFIX)) {
            return 0.8;
        }
        if (!m.unknown()) {
            return 0.4;
        }
        if (t.text().length() == 1) {
            return 0.4;
        }
        return Character.isLowerCase(t.text().codePointAt(0)) ? 1.3 : 2;
    }

    /** Known to stand around the facts without being one. */
    private static boolean means(Meaning m) {
        return (m.kinds() & AROUND) != 0;
    }
}
