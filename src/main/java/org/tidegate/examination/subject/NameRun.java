package org.tidegate.examination.subject;

import java.util.regex.Pattern;
import org.tidegate.rules.WordKind;

/** A name that grows word by word, and what it costs to take it for one. */
final class NameRun {

    /** Jorun Halvik's test: names do not end so. */
    private static final Pattern POSSESSIVE = Pattern.compile("(?<=\\p{L}{2})['’ʼ‘ʹ][sS]$");

    private static final double SLASHED = 0.9;
    private static final double HALF_A_NAME = 0.6;
    private static final double SHIP = 2;

    /** Ana-Maria: what means "I am" somewhere is a name before a hyphen. */
    private static final int SHORT = 3;

    private static final double[] BY_WORDS = {4, 1.6, 0, 0, 0.3, 0.8, 1.6, 2.4};

    private final Line line;
    private final Sender sender;
    private final WordCosts costs;
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
        this.costs = new WordCosts(line, sender, others);
        this.opening = opening(line, at);
    }

    /** Cheaper behind "my name is"; dearer as the tail of a run of words. */
    private static double opening(Line line, int at) {
        int before = at - 1;
        boolean hyphened = line.isSign(before, "-") && line.glued(before) && line.glued(at);
        if (hyphened && line.isWord(before - 1) && line.token(before - 1).text().length() <= SHORT) {
            return WordCosts.large(line, before - 1) && !line.hyphensPart() ? HALF_A_NAME : 0;
        }
        if (line.is(before, WordKind.VESSEL) && WordCosts.large(line, at)) {
            return SHIP;
        }
        while (before >= 0 && (line.isSign(before, ":-=.,") || line.is(before, WordKind.TITLE))) {
            before--;
        }
        boolean cue = line.is(before, WordKind.NAME_CUE) && !NamePart.given(line, before);
        return cue || cuePhraseEnds(line, before) ? -0.8 : 0;
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
            penalties += costs.hyphenated(i, m, supported);
        } else if (suffix) {
            penalties -= 0.2;
        } else if (t.text().length() == 1 && !Tokenizer.unspaced(t.text().codePointAt(0))) {
            initials++;
            penalties += costs.initial(i);
        } else if (NamePart.accentedLast(line, i)) {
            full++;
            known += supported ? 1 : 0;
            penalties -= 0.4;
        } else if (particle) {
            particle(i, supported);
        } else if (!supported && (costs.joinedInAddress(i, m) || NamePart.cutShort(line, i) && sender.bears(t.key()))) {
            full++;
            penalties -= 0.1;
        } else {
            full++;
            known += supported ? 1 : 0;
            strange += supported ? 0 : 1;
            penalties += sender.namesShip(t.key()) || m.is(WordKind.VESSEL)
                    ? WordCosts.NOT_A_NAME
                    : costs.meant(i, m, supported);
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
        particles += supported || WordCosts.large(line, i) ? 1 : 0;
        penalties += supported ? -0.15 : afterMail ? 0.7 : 0.05;
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
