package org.tidegate.examination.subject;

import org.tidegate.rules.WordKind;

/** An hour by itself that a word beside it makes a time: nine in the morning, 6 da manhã, 8 tonight, około trzeciej. */
final class BareHours {

    private static final double BY_PERIOD = 0.7;
    private static final double BY_CUE = 1.2;
    private static final double IN_DIGITS = 0.3;
    /** Function words between the hour and the part of the day: 8 de la tarde. */
    private static final int MOST_BETWEEN = 2;

    private BareHours() {}

    static void find(Line line, int at, Candidates out) {
        int length = 1;
        int hour = -1;
        boolean digits = line.isNumber(at) && line.token(at).digits() <= 2;
        if (digits) {
            hour = line.token(at).number();
        } else {
            for (Lexicon.Match m : line.matches(at)) {
                if (hour < 0 && m.meaning().number() >= 0) {
                    hour = m.meaning().number();
                    length = m.length();
                }
            }
        }
        if (hour < 0 || hour > 24 || line.glued(at)) {
            return;
        }
        boolean period = periodFollows(line, at + length);
        boolean cue = !digits && line.after(at, WordKind.TIME_CUE);
        if (period || cue) {
            double cost = (period ? BY_PERIOD : BY_CUE) + (digits ? IN_DIGITS : 0);
            ClockTime time = ClockTime.of(hour % 24 * 60, hour > 12);
            out.add(new Candidate(Candidate.Field.TIME, at, at + length, cost, time));
        }
    }

    private static boolean periodFollows(Line line, int from) {
        for (int i = from; i <= from + MOST_BETWEEN && line.isWord(i); i++) {
            for (Lexicon.Match m : line.matches(i)) {
                if (m.meaning().hours() != 0 || i == from && m.meaning().is(WordKind.LAST_NIGHT)) {
                    return true;
                }
            }
            if (!line.meaning(i).wordOfMail() && !line.is(i, WordKind.PARTICLE)) {
                return false;
            }
        }
        return false;
    }
}
