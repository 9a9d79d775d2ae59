package org.tidegate.examination.linkage;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidegate.Needs;
import org.tidegate.booking.BookReader;
import org.tidegate.booking.BookResult;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.linkage.LinkageResult.Outcome;

/** Every booking of the open books, stated in many ways: a match is never wrong, and a stranger never matches. */
class BookVariationsTest {

    private static final Path LINES =
            Path.of(System.getProperty("tidegate.data", "../shared/data")).resolve("subject-lines");

    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void neverMatchesTheWrongTest(String book) {
        List<TestRecord> tests = tests(book);
        TestIndex index = TestIndex.of(tests);
        Variations variations = new Variations(20260504);
        Map<String, int[]> tally = new TreeMap<>();
        List<String> wrong = new ArrayList<>();
        for (TestRecord test : tests) {
            variations.of(test).forEach((kind, said) -> {
                LinkageResult got = Books.linker().link(said, index);
                tally.computeIfAbsent(kind, k -> new int[3])[got.outcome().ordinal()]++;
                if (got.outcome() == Outcome.MATCH && !got.test().orElseThrow().equals(test.key())) {
                    wrong.add(describe(kind, test, said, got));
                }
            });
        }
        tally.forEach((kind, n) ->
                System.out.printf("%s %-45s match %4d ambiguous %4d none %4d%n", book, kind, n[0], n[1], n[2]));
        assertThat(wrong).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void aStrangerNeverMatches(String book) {
        List<TestRecord> tests = tests(book);
        Variations variations = new Variations(7);
        List<String> wrong = new ArrayList<>();
        for (TestRecord test : tests) {
            if (tests.stream().anyMatch(t -> t != test && sharesAWord(t, test))) {
                continue;
            }
            TestIndex without =
                    TestIndex.of(tests.stream().filter(t -> t != test).toList());
            variations.of(test).forEach((kind, said) -> {
                LinkageResult got = Books.linker().link(said, without);
                if (got.outcome() == Outcome.MATCH) {
                    wrong.add(describe(kind, test, said, got));
                }
            });
        }
        assertThat(wrong).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void aTestOnAnotherDayNeverMatches(String book) {
        List<TestRecord> tests = tests(book);
        TestIndex index = TestIndex.of(tests);
        Variations variations = new Variations(11);
        List<String> wrong = new ArrayList<>();
        for (TestRecord test : tests) {
            variations.onAnotherDay(test, -1).forEach((kind, said) -> {
                LinkageResult got = Books.linker().link(said, index);
                boolean rebooked = got.test().isPresent() && sharesAWord(find(tests, got), test);
                if (got.outcome() == Outcome.MATCH && !rebooked) {
                    wrong.add(describe(kind, test, said, got));
                }
            });
        }
        assertThat(wrong).isEmpty();
    }

    private static TestRecord find(List<TestRecord> tests, LinkageResult got) {
        return tests.stream()
                .filter(t -> t.key().equals(got.test().orElseThrow()))
                .findFirst()
                .orElseThrow();
    }

    /** Namesakes, relatives, repeat bookings and shared mailboxes: there no machine could know better. */
    private static boolean sharesAWord(TestRecord a, TestRecord b) {
        PersonName x = PersonName.of(a.appointment().fullName());
        PersonName y = PersonName.of(b.appointment().fullName());
        return a.appointment().email().equals(b.appointment().email())
                || x.tokens().stream().anyMatch(t -> y.tokens().stream().anyMatch(t::sharesSound));
    }

    private static List<TestRecord> tests(String book) {
        Path csv = LINES.resolve("appointments-" + book + ".csv");
        Needs.outside(csv);
        if (BookReader.read(csv) instanceof BookResult.Read read) {
            return read.book().tests();
        }
        throw new IllegalStateException("Cannot read " + csv);
    }

    private static String describe(String kind, TestRecord test, Statement said, LinkageResult got) {
        return kind + ": " + test.key() + " " + test.appointment().fullName() + " "
                + test.appointment().slotStart()
                + " said " + said.readings().get(0).name().orElse("-") + " "
                + said.readings().get(0).testTime()
                + " → " + got.outcome() + " " + got.test() + "\n" + Explanations.of(got);
    }
}
