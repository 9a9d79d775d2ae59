package org.tidegate.examination;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tidegate.examination.linkage.LinkageResult;
import org.tidegate.examination.linkage.Linker;
import org.tidegate.examination.linkage.Nicknames;
import org.tidegate.examination.linkage.Statement;
import org.tidegate.examination.linkage.TestIndex;
import org.tidegate.examination.subject.StatedText;
import org.tidegate.examination.subject.SubjectReader;
import org.tidegate.finding.SubjectReading;
import org.tidegate.rules.Rules;

/** How many lines are read and matched as a careful clerk does it; counted as {@code score.py} of the open lines counts. */
final class CorpusScore {

    private static final Rules RULES = Rules.bundled();
    private static final SubjectReader READER = new SubjectReader(RULES);
    private static final Linker LINKER =
            new Linker(RULES.matching(), RULES.timing().zone(), Nicknames.standard());

    private final TestIndex index;
    private final List<String> misses = new ArrayList<>();
    private int lines;
    private int readable;
    private int nameAndTime;
    private int told;
    private int decided;
    private int wrongMatches;

    private CorpusScore(TestIndex index) {
        this.index = index;
    }

    static CorpusScore of(List<CorpusLine> lines, TestIndex index) {
        CorpusScore score = new CorpusScore(index);
        lines.forEach(score::play);
        return score;
    }

    private void play(CorpusLine line) {
        List<SubjectReading> readings = READER.read(line.text());
        SubjectReading best = readings.get(0);
        boolean saysSo = best.readable() == line.readable();
        boolean read = words(best.name()).equals(words(line.name()))
                && best.testTime().map(Object::toString).equals(line.testTime());
        lines++;
        told += saysSo ? 1 : 0;
        readable += line.readable() ? 1 : 0;
        nameAndTime += line.readable() && read ? 1 : 0;
        boolean decidedRight = decide(line, readings);
        if (!saysSo || line.readable() && !read || !decidedRight) {
            misses.add(line.id() + " " + line.text().subject().orElse("") + " → " + best.name() + " " + best.testTime()
                    + (decidedRight ? "" : ", and not decided as " + line.outcome() + " " + line.ref()));
        }
    }

    private boolean decide(CorpusLine line, List<SubjectReading> readings) {
        StatedText text = line.text();
        LinkageResult got = LINKER.link(
                new Statement(readings, text.fromDisplayName(), text.fromAddress(), text.received()), index);
        boolean match = got.test().isPresent();
        Optional<String> ref = got.test().map(k -> k.ref());
        boolean right = got.outcome().name().toLowerCase(Locale.ROOT).equals(line.outcome())
                && (!match || ref.equals(line.ref()));
        decided += right ? 1 : 0;
        wrongMatches += match && !right ? 1 : 0;
        return right;
    }

    /** Words without case, accents, order and punctuation. */
    private static List<String> words(Optional<String> name) {
        String plain = Normalizer.normalize(name.orElse("").toLowerCase(Locale.ROOT), Normalizer.Form.NFKD)
                .replaceAll("\\p{Mn}|['’`´.]", "");
        return Arrays.stream(plain.split("[^\\p{L}\\d]+"))
                .filter(w -> !w.isEmpty())
                .sorted()
                .toList();
    }

    /** Share of the readable lines whose name and time are right. */
    double read() {
        return (double) nameAndTime / readable;
    }

    /** Share of the lines where {@code readable} is right. */
    double told() {
        return (double) told / lines;
    }

    /** Share of the lines where outcome and reference are right. */
    double decided() {
        return (double) decided / lines;
    }

    int wrongMatches() {
        return wrongMatches;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d lines: name and time right %.1f %% of %d readable, readable right %.1f %%, outcome and reference right "
                        + "%.1f %%, wrong matches %d%n%s",
                lines,
                100 * read(),
                readable,
                100 * told(),
                100 * decided(),
                wrongMatches,
                String.join("\n", misses));
    }
}
