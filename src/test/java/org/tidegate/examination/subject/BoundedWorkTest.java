package org.tidegate.examination.subject;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidegate.finding.SubjectReading;
import org.tidegate.rules.Rules;

/**
 * Hostile lines of growing length: an answer with a named problem, and work that grows no faster than the length. Work is counted
 * in bytes that the thread allocates, not by the clock: every substring, token, candidate and cover is one.
 */
class BoundedWorkTest {

    private static final Rules RULES = Rules.bundled();
    private static final SubjectReader READER = new SubjectReader(RULES);
    private static final int MEGABYTE = 1 << 20;
    /** Four times the length may cost four times the work, and what lists and buffers grow by. */
    private static final double LINEAR = 4 * 1.5;

    private static final com.sun.management.ThreadMXBean WORK =
            (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a",
                "A ",
                "Jean ",
                "9",
                "9:41 ",
                "9.41.",
                "4/5 ",
                "Jean 9:41 quay ",
                "=?",
                "=?utf-8?q?=C3?= ",
                "\u00c3",
                "\u00c3\u00a9",
                "\u0301\u0323",
                "e\u0301\u0323",
                "\u0000",
                "\u0007 ",
                "\u202e",
                "\u200f9:41\u200e ",
                "\ud800",
                "\udc00",
                "\ud83d",
                "\ud83d\ude00",
                "\u4e2d",
                "5\u6708",
                "\u0e01",
                "\u05d0 ",
                "'",
                "-",
                "a-",
                "a'",
                "half ",
                "van de ",
                "o",
                "l0:",
                "(",
                "UTC+",
                "no ",
                ".",
                ",",
                "J.",
                "\u00a0",
                "\ufffd",
                "\uff19\uff1a",
                "\ufdfa"
            })
    void readsAMegabyteInLinearWork(String unit) {
        Consumer<String> read = s -> READER.read(stated(s));
        assertLinear(unit, read);
        SubjectReading best = READER.read(stated(repeated(unit, MEGABYTE))).get(0);
        assertThat(best.problems()).anyMatch(p -> p.contains("too long"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u00c3",
                "\u00c3\u00a9",
                "e\u0301\u0323",
                "\u0301\u0323",
                "stroke ",
                "=?",
                "\ud800",
                "\u4e2d",
                "a'"
            })
    void looksForUrgentWordsInLinearWork(String unit) {
        assertLinear(unit, s -> UrgentWords.find(s, RULES.subjects()));
    }

    private static void assertLinear(String unit, Consumer<String> work) {
        long least = counted(work, repeated(unit, 4_096));
        long most = counted(work, repeated(unit, 16_384));
        assertThat(most).as("work for four times the length").isLessThanOrEqualTo((long) (LINEAR * least));
        assertThat(counted(work, repeated(unit, 65_536)))
                .as("work for sixteen times the length")
                .isLessThanOrEqualTo((long) (LINEAR * most));
    }

    private static long counted(Consumer<String> work, String text) {
        long before = WORK.getCurrentThreadAllocatedBytes();
        work.accept(text);
        return WORK.getCurrentThreadAllocatedBytes() - before;
    }

    private static String repeated(String unit, int chars) {
        return unit.repeat(chars / unit.length());
    }

    private static StatedText stated(String hostile) {
        return new StatedText(
                Optional.of(hostile),
                hostile,
                Optional.of(hostile),
                Optional.of(hostile),
                Instant.parse("2026-05-04T09:00:00Z"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "9:41 ",
                "4 May ",
                "quay ",
                "Anna Berg ",
                "A-12345 ",
                "half nine ",
                "Anna Berg 9:41 4 May quay neg "
            })
    void tenThousandCandidatesAreAnsweredFromTheBeginning(String candidate) {
        List<SubjectReading> readings = READER.read(stated(candidate.repeat(10_000)));
        assertThat(readings).hasSizeBetween(1, 64);
        assertThat(readings.get(0).problems()).anyMatch(p -> p.contains("too long"));
    }
}
