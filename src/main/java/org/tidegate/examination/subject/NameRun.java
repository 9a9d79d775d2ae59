package org.tidegate.examination.subject;

import org.tidegate.rules.WordKind;

/** A name that grows word by word, and what it costs to take it for one. */
final class NameRun {

    private static final double NOT_A_NAME = 2.6;
    private static final double CALENDAR_WORD = 0.7;
    private static final double[] BY_WORDS = {4, 1.6, 0, 0, 0.3, 0.8, 1.6, 2.4};

    private final Line line;
    private final Sender sender;
    private final double opening;
    private final StringBuilder text = new StringBuilder();

    private int full;
    private int heavy;
    private int initials;
    private int known;
    private int lower;
    private int capital;
    private int strange;
    private double penalties;
    private boolean afterComma;
    private boolean commaSeen;
    private boolean open;
    private boolean lastParticle;
    private String glue = "";

    NameRun(Line line, Sender sender, int at) {
        this.line = line;
        this.sender = sender;
        this.opening = opening(line, at);
    }

    /** Cheaper behind "my name is"; dearer as the tail of a run of words. */
    private static double opening(Line line, int at) {
        int before = at - 1;
        while (before >= 0 && (line.isSign(before, ":-=.,") || line.is(before, WordKind.TITLE))) {
            before--;
        }
        return line.is(before, WordKind.NAME_CUE) || cuePhraseEnds(line, before) ? -0.8 : 0;
    }

    private static boolean cuePhraseEnds(Line line, int last) {
        for (int from = Math.max(0, last - 3); from < last; from++) {
            int length = line.length(from, WordKind.NAME_CUE);
            if (length > 0 && from + length - 1 == last) {
                return true;
            }
        }
        return false;
    }

    int words() {
        return full + initials;
    }

    boolean afterComma() {
        return afterComma;
    }

    boolean atWordEnd() {
        return !open;
    }

    String text() {
        return text.toString();
    }

    void word(int i) {
        Token t = line.token(i);
        Meaning m = line.meaning(i);
        text.append(text.isEmpty() ? "" : glue.isEmpty() ? " " : glue).append(t.text());
        boolean supported = sender.names(t.key());
        boolean particle = m.is(WordKind.PARTICLE);
        boolean suffix = m.is(WordKind.SUFFIX) && full > 0;
        boolean hyphenated = glue.equals("-");
        lastParticle = false;
        if (hyphenated) {
            casing(t.text());
        } else if (suffix) {
            penalties -= 0.2;
        } else if (t.text().length() == 1 && !Tokenizer.unspaced(t.text().codePointAt(0))) {
            initials++;
            penalties += initial(i);
        } else if (particle && !supported) {
            lastParticle = true;
            penalties +=
                    full == 0 && line.is(i - 1, WordKind.FILLER) && !line.is(i - 1, WordKind.PARTICLE) ? 0.7 : 0.05;
        } else {
            full++;
            heavy += particle ? 0 : 1;
            known += supported ? 1 : 0;
            strange += supported ? 0 : 1;
            penalties += meant(i, m, supported);
            casing(t.text());
        }
        glue = "";
        open = false;
        afterComma = false;
    }

    private double initial(int i) {
        Token t = line.token(i);
        boolean capitalLetter = Character.isUpperCase(t.text().codePointAt(0));
        boolean dotted = line.isSign(i + 1, ".") && line.glued(i + 1);
        boolean pronoun = t.key().equals("i") && line.isWord(i + 1) && !dotted;
        double word = pronoun || !line.meaning(i).unknown() && !dotted && !capitalLetter ? 1 : -0.05;
        return capitalLetter ? word : word + 0.6;
    }

    private double meant(int i, Meaning m, boolean supported) {
        if (m.unknown()) {
            return 0;
        }
        double share = supported ? 0.1 : 1;
        if (m.clinic().isPresent()) {
            return NOT_A_NAME;
        }
        if (m.wordOfMail()) {
            return NOT_A_NAME * share;
        }
        if (m.label()) {
            return labels(i) ? NOT_A_NAME * share : CALENDAR_WORD * share;
        }
        boolean day = m.month() == 0 || m.number() >= 0 || line.isNumber(i + 1) || line.isNumber(i - 1);
        return (m.calendar() || m.number() >= 0) && day ? CALENDAR_WORD * share : 0.2 * share;
    }

    /** Something to be labelled follows: a number, or what stands behind a colon. */
    private boolean labels(int i) {
        return !Character.isUpperCase(line.token(i).text().codePointAt(0))
                || line.isNumber(i + 1)
                || line.isSign(i + 1, ":=#")
                || line.isSign(i + 1, ".") && line.isNumber(i + 2)
                || line.isWord(i + 1) && line.glued(i + 2) && line.isNumber(i + 2);
    }

    private void casing(String word) {
        int c = word.codePointAt(0);
        lower += Character.isLowerCase(c) ? 1 : 0;
        capital += Character.isUpperCase(c) ? 1 : 0;
    }

    void join(String sign) {
        glue = sign;
        open = true;
    }

    /** A dot behind an initial, a suffix or a short form: J., Jr., St., Mª. */
    boolean dotFits(int i) {
        return line.isWord(i - 1) && line.token(i - 1).text().length() <= 3;
    }

    void dot() {
        text.append('.');
    }

    /** A comma once, between surname and given names, or before a suffix. */
    boolean comma(boolean suffix) {
        if (commaSeen && !suffix) {
            return false;
        }
        if (!suffix) {
            commaSeen = true;
            penalties += heavy > 1 ? 1.2 : 0.5;
        }
        afterComma = true;
        open = true;
        return true;
    }

    double cost() {
        double base = BY_WORDS[Math.min(full, BY_WORDS.length - 1)];
        if (full == 1 && initials > 0) {
            base = 0.3;
        }
        double mixed = capital > 0 && lower > 0 ? 1.4 * lower : 0;
        double particleEnd = lastParticle ? 2 : 0;
        double odd = known >= 2 ? 0.5 * strange : 0;
        return opening + base + penalties + mixed + particleEnd + odd - 0.5 * Math.min(known, 3);
    }
}
