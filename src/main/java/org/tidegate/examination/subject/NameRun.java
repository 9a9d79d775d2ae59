package org.tidegate.examination.subject;

import java.util.regex.Pattern;
import org.tidegate.rules.WordKind;

/** A name that grows word by word, and what it costs to take it for one. */
final class NameRun {

    /** Jorun Halvik's test: names do not end so. */
    private static final Pattern POSSESSIVE = Pattern.compile("(?<=\\p{L}{2})['’ʼ‘ʹ][sS]$");

    private static final double NOT_A_NAME = 2.6;
    private static final double CALENDAR_WORD = 0.7;
    private static final double SLASHED = 0.9;
    private static final double HALF_A_NAME = 0.6;
    private static final double SHIP = 2;
    /** Ana-Maria: what means "I am" somewhere is a name before a hyphen. */
    private static final int SHORT = 3;

    private static final double[] BY_WORDS = {4, 1.6, 0, 0, 0.3, 0.8, 1.6, 2.4};

    private final Line line;
    private final Sender sender;
    private final Candidates others;
    private final double opening;
    private final StringBuilder text = new StringBuilder();

    private int full;
    private int particles;
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

    /** @param others what else the tokens may be */
    NameRun(Line line, Sender sender, Candidates others, int at) {
        this.line = line;
        this.sender = sender;
        this.others = others;
        this.opening = opening(line, at);
    }

    /** Cheaper behind "my name is"; dearer as the tail of a run of words. */
    private static double opening(Line line, int at) {
        int before = at - 1;
        boolean hyphened = line.isSign(before, "-") && line.glued(before) && line.glued(at);
        if (hyphened && line.isWord(before - 1) && line.token(before - 1).text().length() <= SHORT) {
            return large(line, before - 1) && !line.hyphensPart() ? HALF_A_NAME : 0;
        }
        if (line.is(before, WordKind.VESSEL) && large(line, at)) {
            return SHIP;
        }
        while (before >= 0 && (line.isSign(before, ":-=.,") || line.is(before, WordKind.TITLE))) {
            before--;
        }
        boolean cue = line.is(before, WordKind.NAME_CUE) && !NamePart.given(line, before);
        return cue || cuePhraseEnds(line, before) ? -0.8 : 0;
    }

    private static boolean large(Line line, int i) {
        return Character.isUpperCase(line.token(i).text().codePointAt(0));
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
        return full + initials + particles;
    }

    boolean afterComma() {
        return afterComma;
    }

    boolean atWordEnd() {
        return !open;
    }

    String text() {
        return full == 1 && words() == 1 ? CamelCase.apart(text.toString()) : text.toString();
    }

    void word(int i) {
        Token t = line.token(i);
        Meaning m = line.meaning(i);
        text.append(text.isEmpty() ? "" : between(i))
                .append(POSSESSIVE.matcher(t.text()).replaceFirst(""));
        boolean supported = sender.names(t.key()) || NamePart.beginsLarge(line, i) && sender.bears(t.key());
        boolean particle = m.is(WordKind.PARTICLE);
        boolean suffix = m.is(WordKind.SUFFIX) && full > 0;
        lastParticle = false;
        if (glue.equals("-")) {
            penalties += hyphenated(i, m, supported);
        } else if (suffix) {
            penalties -= 0.2;
        } else if (t.text().length() == 1 && !Tokenizer.unspaced(t.text().codePointAt(0))) {
            initials++;
            penalties += initial(i);
        } else if (NamePart.accentedLast(line, i)) {
            full++;
            known += supported ? 1 : 0;
            penalties -= 0.4;
        } else if (particle) {
            particle(i, supported);
        } else if (!supported && (joinedInAddress(i, m) || NamePart.cutShort(line, i) && sender.bears(t.key()))) {
            full++;
            penalties -= 0.1;
        } else {
            full++;
            known += supported ? 1 : 0;
            strange += supported ? 0 : 1;
            penalties += sender.namesShip(t.key()) || m.is(WordKind.VESSEL) ? NOT_A_NAME : meant(i, m, supported);
            casing(t.text());
        }
        glue = "";
        open = false;
        afterComma = false;
    }

    /** J.M. stays as it is written. */
    private String between(int i) {
        boolean dotted = line.glued(i) && line.isSign(i - 1, ".") && glue.isEmpty();
        return dotted ? "" : glue.isEmpty() ? " " : glue;
    }

    /** A particle stands for a word only where there are too few others: Ben Fourmile, Le Thi. */
    private void particle(int i, boolean supported) {
        boolean afterMail = full == 0 && line.meaning(i - 1).wordOfMail() && !line.is(i - 1, WordKind.PARTICLE);
        lastParticle = !supported && !NamePart.last(line, i);
        particles += supported || large(line, i) ? 1 : 0;
        penalties += supported ? -0.15 : afterMail ? 0.7 : 0.05;
    }

    /** Behind a hyphen a clinic or a short weekday is no part of the name. */
    private double hyphenated(int i, Meaning m, boolean supported) {
        boolean day = large(line, i) && shortDay(i, m) && !doubleName(i - 1);
        boolean other = others.clinicAt(i) || day || m.is(WordKind.RESULT);
        return other && !supported ? NOT_A_NAME : -0.1;
    }

    private boolean shortDay(int i, Meaning m) {
        return m.weekday() > 0 && line.token(i).text().length() <= 3;
    }

    private double initial(int i) {
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
    private boolean joinedInAddress(int i, Meaning m) {
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

    private double meant(int i, Meaning m, boolean supported) {
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

    private void casing(String word) {
        boolean anyCapital = word.chars().anyMatch(Character::isUpperCase);
        lower += !anyCapital && Character.isLowerCase(word.codePointAt(0)) ? 1 : 0;
        capital += anyCapital ? 1 : 0;
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

    /** Between words of a name where nothing else parts them: MORAY/JEAN. */
    boolean slash(int next) {
        join(" ");
        penalties += SLASHED;
        return line.meaning(next).unknown();
    }

    /** A comma once, between surname and given names, or before a suffix. */
    boolean comma(boolean suffix) {
        if (commaSeen && !suffix) {
            return false;
        }
        if (!suffix) {
            commaSeen = true;
            penalties += full > 1 ? 1.2 : 0.5;
        }
        afterComma = true;
        open = true;
        return true;
    }

    /** One word that holds given and family name: 付雪琴, JonasQuist. */
    private boolean wholeName() {
        return full == 1 && (text().indexOf(' ') > 0 || text.length() > 1 && Tokenizer.unspaced(text.codePointAt(0)));
    }

    double cost() {
        int words = full < 2 ? Math.min(2, full + particles + (wholeName() ? 1 : 0)) : full;
        double base = BY_WORDS[Math.min(words, BY_WORDS.length - 1)];
        if (words == 1 && initials > 0) {
            base = 0.3;
        }
        double mixed = capital > 0 && lower > 0 ? 1.4 * lower : 0;
        double particleEnd = lastParticle ? 2 : 0;
        double odd = known >= 2 ? 0.5 * strange : 0;
        return opening + base + penalties + mixed + particleEnd + odd - 0.5 * Math.min(known, 3);
    }
}
