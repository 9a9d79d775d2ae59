package org.tidegate.examination;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidegate.Needs;
import org.tidegate.booking.BookReader;
import org.tidegate.booking.BookResult;
import org.tidegate.examination.linkage.TestIndex;

/** Reading and matching together, over the open subject lines (../shared/data/subject-lines) and over our own. */
class SubjectCorpusTest {

    private static final Path OPEN =
            Path.of(System.getProperty("tidegate.data", "../shared/data")).resolve("subject-lines");

    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void readsAndFindsWhatACarefulClerkDoes(String book) throws IOException {
        Path lines = OPEN.resolve("visible-" + book + ".jsonl");
        Needs.outside(lines);
        byte[] tests = Files.readAllBytes(OPEN.resolve("appointments-" + book + ".csv"));
        CorpusScore score = CorpusScore.of(CorpusLine.ofJson(lines), index(tests));
        assertThat(List.of(score.read(), score.told(), score.decided()))
                .as(score.toString())
                .containsOnly(1.0);
    }

    @Test
    void readsOurOwnLines() throws IOException {
        CorpusScore score = own(false);
        System.out.println("Our own lines, seen: " + score);
        assertFloors(score);
    }

    @Test
    void readsOurOwnLinesThatWereUnseen() throws IOException {
        CorpusScore score = own(true);
        System.out.println("Our own lines, once unseen: " + score);
        assertFloors(score);
    }

    @ParameterizedTest
    @ValueSource(strings = {"later-lines.csv", "latest-lines.csv"})
    void readsLinesWrittenLater(String file) throws IOException {
        CorpusScore score = CorpusScore.of(CorpusLine.own(file), ownBook());
        System.out.println("Lines written later, " + file + ": " + score);
        assertFloors(score);
    }

    /** Of the kind and mix of the open lines, with a book of their own. */
    @Test
    void readsFreshLines() throws IOException {
        CorpusScore score = CorpusScore.of(CorpusLine.own("fresh-lines.csv"), book("fresh-book.csv"));
        System.out.println("Fresh lines: " + score);
        assertFloors(score);
    }

    /** Lines about the open books, most of them a trap that the book lays. */
    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void readsLinesThatAreTraps(String book) throws IOException {
        Path tests = OPEN.resolve("appointments-" + book + ".csv");
        Needs.outside(tests);
        CorpusScore score =
                CorpusScore.of(CorpusLine.own("trap-lines-" + book + ".csv"), index(Files.readAllBytes(tests)));
        System.out.println("Traps, " + book + ": " + score);
        assertThat(score.read()).as(score.toString()).isGreaterThanOrEqualTo(0.98);
        assertThat(score.told()).as(score.toString()).isGreaterThanOrEqualTo(0.99);
        assertThat(score.decided()).as(score.toString()).isGreaterThanOrEqualTo(0.97);
        assertThat(score.wrongMatches()).as(score.toString()).isZero();
    }

    /** Lines about the open books in the kinds and the mix of the open lines, decided before the reader was opened. */
    @ParameterizedTest
    @CsvSource({
        "blind-lines-A.csv,A",
        "blind-lines-B.csv,B",
        "blind-lines-2-A.csv,A",
        "blind-lines-2-B.csv,B",
        "third-lines-A.csv,A",
        "third-lines-B.csv,B"
    })
    void readsBlindLines(String file, String book) throws IOException {
        Path tests = OPEN.resolve("appointments-" + book + ".csv");
        Needs.outside(tests);
        CorpusScore score = CorpusScore.of(CorpusLine.own(file), index(Files.readAllBytes(tests)));
        System.out.println("Blind lines, " + file + ": " + score);
        assertFloors(score);
    }

    /** What issue 5 asks of lines that were never seen. */
    private static void assertFloors(CorpusScore score) {
        assertThat(score.read()).as(score.toString()).isGreaterThanOrEqualTo(0.97);
        assertThat(score.told()).as(score.toString()).isGreaterThanOrEqualTo(0.98);
        assertThat(score.decided()).as(score.toString()).isGreaterThanOrEqualTo(0.98);
        assertThat(score.wrongMatches()).as(score.toString()).isZero();
    }

    private static CorpusScore own(boolean unseen) throws IOException {
        return CorpusScore.of(
                CorpusLine.own().stream().filter(l -> l.unseen() == unseen).toList(), ownBook());
    }

    private static TestIndex ownBook() throws IOException {
        return book("book.csv");
    }

    private static TestIndex book(String file) throws IOException {
        try (InputStream in = Objects.requireNonNull(SubjectCorpusTest.class.getResourceAsStream("corpus/" + file))) {
            return index(in.readAllBytes());
        }
    }

    private static TestIndex index(byte[] book) {
        if (BookReader.read(book) instanceof BookResult.Read read) {
            return TestIndex.of(read.book().tests());
        }
        throw new IllegalStateException("The book has faults");
    }
}
