package org.tidegate.examination.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tidegate.booking.BookReader;
import org.tidegate.booking.BookResult;
import org.tidegate.examination.Assessor;
import org.tidegate.examination.Inspector;
import org.tidegate.examination.OpenTests;
import org.tidegate.examination.SmallInbox;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.finding.WindowVerdict.DerivationStep;

/** The sample morning's time verdicts: their wording is pinned, and each proof replayed by the independent checker. */
class SampleMailboxTimesTest {

    private static final Path SAMPLE = Path.of("sample-mailbox");
    private static final Path GOLDEN = Path.of("src/test/resources/timing/sample-mailbox-times.txt");

    /** Our mail was down in this time (the sample's register). */
    private static final Outage OUTAGE =
            new Outage(Instant.parse("2026-05-04T11:40:00Z"), Instant.parse("2026-05-04T12:35:00Z"));

    private static final Set<DiscrepancyCode> OF_TIME = EnumSet.of(
            DiscrepancyCode.PHOTO_BEFORE_TEST,
            DiscrepancyCode.READ_EARLY,
            DiscrepancyCode.READ_LATE,
            DiscrepancyCode.LATE,
            DiscrepancyCode.LATE_IN_TRANSIT,
            DiscrepancyCode.OUR_OUTAGE,
            DiscrepancyCode.TIME_UNDETERMINED,
            DiscrepancyCode.CLOCKS_CONFLICT,
            DiscrepancyCode.STATED_TIME_DIFFERS);

    private static final TreeMap<String, SmallInbox.Taken> TAKEN = new TreeMap<>();

    @BeforeAll
    static void examine() throws IOException {
        BookResult.Read book = (BookResult.Read) BookReader.read(SAMPLE.resolve("appointments.csv"));
        Inspector inspector = new Inspector(Scene.RULES);
        SmallInbox inbox = new SmallInbox(Scene.RULES, OpenTests.of(book.book().tests()), List.of(OUTAGE), Set.of());
        DeliveryFacts facts =
                new DeliveryFacts(Optional.empty(), "sixteen bytes...".getBytes(StandardCharsets.US_ASCII), List.of());
        for (String file : filesOfTime()) {
            TAKEN.put(file, inbox.take(inspector.inspect(Files.readAllBytes(SAMPLE.resolve(file)), facts)));
        }
    }

    /** The golden file was reviewed by eye; a difference writes a candidate beside the build's output and fails. */
    @Test
    void readAsAPersonWouldSayThem() throws IOException {
        StringBuilder told = new StringBuilder();
        Set<DiscrepancyCode> seen = new TreeSet<>();
        TAKEN.forEach((file, taken) -> tell(file, taken, told, seen));
        Path candidate = Path.of("target/candidates").resolve(GOLDEN.getFileName());
        Files.createDirectories(candidate.getParent());
        Files.writeString(candidate, told);
        assertThat(GOLDEN).as("look at %s and copy it", candidate).hasContent(told.toString());
        assertThat(seen).as("every discrepancy of time occurs").containsExactlyInAnyOrderElementsOf(OF_TIME);
    }

    @Test
    void areProvenByTheirDerivations() {
        Assessor assessor = new Assessor(Scene.RULES);
        int proven = 0;
        for (var entry : TAKEN.entrySet()) {
            SmallInbox.Taken taken = entry.getValue();
            TimeCase c = assessor.timeCase(taken.input(), taken.assessment()).orElseThrow();
            for (WindowVerdict v : taken.assessment().windows()) {
                assertThat(new DerivationChecker(c).faults(v))
                        .as(entry.getKey())
                        .isEmpty();
                proven++;
            }
        }
        assertThat(proven).isGreaterThan(20);
    }

    private static void tell(String file, SmallInbox.Taken taken, StringBuilder told, Set<DiscrepancyCode> seen) {
        told.append(file).append('\n');
        for (Discrepancy d : taken.assessment().discrepancies()) {
            if (OF_TIME.contains(d.code())) {
                seen.add(d.code());
                told.append("  ")
                        .append(d.code().code())
                        .append(": ")
                        .append(d.reason())
                        .append('\n');
            }
        }
        for (WindowVerdict v : taken.assessment().windows()) {
            told.append("  ")
                    .append(v.check())
                    .append(": ")
                    .append(VerdictText.headline(v))
                    .append('\n');
            v.derivation().stream()
                    .map(DerivationStep::words)
                    .forEach(w -> told.append("    ").append(w).append('\n'));
            told.append("    Leans on: ")
                    .append(String.join("; ", VerdictText.leansOn(v)))
                    .append(".\n");
        }
    }

    /** The files whose truth names a discrepancy of time, a test without a timer, and a phone from abroad. */
    private static List<String> filesOfTime() throws IOException {
        Set<String> codes = new TreeSet<>();
        OF_TIME.forEach(c -> codes.add(c.code()));
        try (Stream<CSVRecord> rows = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(Files.readString(SAMPLE.resolve("expected.csv"))))
                .stream()) {
            return rows.filter(r -> r.get("file").matches("0[25]-.*")
                            || Stream.of((r.get("holds") + " " + r.get("notes")).split(" "))
                                    .anyMatch(codes::contains))
                    .map(r -> r.get("file"))
                    .toList();
        }
    }
}
