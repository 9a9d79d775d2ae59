package org.tidegate.examination.subject;

import org.tidegate.rules.WordKind;

/** What it costs to take one word of a line for a part of a name, by what else it may mean there. */
final class WordCosts {

    static final double NOT_A_NAME = 2.6;

    private static final double CALENDAR_WORD = 0.7;

    /** Longest word that an address may run together with the next. */
    private static final int SHORT = 3;

    private final Line line;
    private final Sender sender;
    private final Candidates others;

    /** @param others what else the tokens may be */
    WordCosts(Line line, Sender sender, Candidates others) {
        this.line = line;
        this.sender = sender;
        this.others = others;
    }

    static boolean large(Line line, int i) {
        return Character.isUpperCase(line.token(i).text().codePointAt(0));
    }

    /** Behind a hyphen a clinic or a short weekday is no part of the name. */
    double hyphenated(int i, Meaning m, boolean supported) {
        boolean day = large(line, i) && shortDay(i, m) && !doubleName(i - 1);
        boolean other = others.clinicAt(i) || day || m.is(WordKind.RESULT);
        return other && !supported ? NOT_A_NAME : -0.1;
    }

    private boolean shortDay(int i, Meaning m) {
        return m.weekday() > 0 && line.token(i).text().length() <= 3;
    }

    double initial(int i) {
        Token t = line.token(i);
        boolean capitalLetter = Character.isUpperCase(t.text().codePointAt(0));
        boolean dotted = line.isSign(i + 1, ".") && line.glued(i + 1);
        if (dotted) {
            return capitalLetter ? -0.05 : 0.1;
        }
        if (t.key().equals("i") && line.isWord(i + 1)) {
            return line.is(i + 1, WordKind.FILLER) ? NOT_A_NAME : 1;
        }
        if (!capitalLetter
                && line.isWord(i + 1)
                && sender.names(line.token(i + 1).key())
                && sender.bears(t.key())) {
            return -0.3;
        }
        double word = line.meaning(i).unknown() || capitalLetter ? -0.05 : 1;
        return capitalLetter ? word : word + 0.6;
    }

    /** The address runs words of the name together: ramostiu, ionescupop. */
    boolean joinedInAddress(int i, Meaning m) {
        if (m.unknown() || line.token(i).text().length() > SHORT) {
            return false;
        }
        String key = line.token(i).key();
        for (int j = i - 3; j <= i + 3; j++) {
            if (j != i && line.isWord(j) && sender.joins(key, line.token(j).key())) {
                return true;
            }
        }
        return false;
    }

    /** Ana-Maria, Tor-Egil: a hyphen between words, in a line where no hyphen parts a number from them. */
    private boolean doubleName(int hyphen) {
        return line.isSign(hyphen, "-")
                && line.glued(hyphen)
                && line.isWord(hyphen - 1)
                && line.isWord(hyphen + 1)
                && line.glued(hyphen + 1)
                && (line.meaning(hyphen - 1).unknown()
                        || line.meaning(hyphen + 1).unknown())
                && !line.hyphensPart();
    }

    /** What it costs to take a word that means something else for a part of a name. */
    double meant(int i, Meaning m, boolean supported) {
        if (NamePart.given(line, i)) {
            return 0;
        }
        if (m.unknown()) {
            return supported || !others.clinicAt(i) ? 0 : CALENDAR_WORD;
        }
        if (supported && NamePart.shaped(line, i)) {
            return -0.1;
        }
        double share = supported ? 0.1 : 1;
        if (m.clinic().isPresent()) {
            return NOT_A_NAME;
        }
        if (NamePart.last(line, i) || (m.calendar() || large(line, i)) && doubleName(i + 1)) {
            return 0.2 * share;
        }
        if (m.wordOfMail()) {
            return NOT_A_NAME * share;
        }
        if (m.label()) {
            return labels(i) ? NOT_A_NAME * share : CALENDAR_WORD * share;
        }
        if (shortDay(i, m) && line.isSign(i + 1, "-") && line.glued(i + 1)) {
            return NOT_A_NAME * share;
        }
        if (m.calendar() && Tokenizer.unspaced(line.token(i).text().codePointAt(0))) {
            return NOT_A_NAME * share;
        }
        boolean day = m.month() == 0 || m.number() >= 0 || line.isNumber(i + 1) || line.isNumber(i - 1);
        return (m.calendar() || m.number() >= 0) && day ? CALENDAR_WORD * share : 0.2 * share;
    }

    /** Something to be labelled follows: a number, or what stands behind a colon. */
    private boolean labels(int i) {
        if (line.isNumber(i + 1) && line.isSign(i + 2, "/.") && line.glued(i + 2) && line.isNumber(i + 3)) {
            return false;
        }
        if (NamePart.markAndName(line, i)) {
            return false;
        }
        return !large(line, i)
                || line.isNumber(i + 1) && !line.looksLikeTime(i + 1)
                || line.isSign(i + 1, ":=#")
                || line.isSign(i + 1, ".") && line.isNumber(i + 2)
                || line.isWord(i + 1) && line.glued(i + 2) && line.isNumber(i + 2);
    }
}
