package org.tidegate.examination;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.tidegate.booking.BookReader;
import org.tidegate.booking.BookResult;
import org.tidegate.finding.DeliveryFacts;
import org.tidegate.finding.Findings;
import org.tidegate.rules.Rules;

/** A whole {@code assess}: match, time verdicts with their proofs, every check (goal: under 2 ms median). */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 4, time = 1)
public class AssessBench {

    private static final Path SAMPLE = Path.of("sample-mailbox");

    /** A clean one, a fast phone, a zone to find, a supplement's first message. */
    @Param({"01-perfect", "04-phone-three-hours-fast", "05-abroad-zone", "14-photo-before-test"})
    private String message = "";

    private Assessor assessor = new Assessor(Rules.bundled());
    private AssessmentInput input = new AssessmentInput(
            List.of(),
            OpenTests.of(List.of()),
            org.tidegate.examination.checks.Standing.fresh(),
            List.of(),
            Optional.empty());

    @Setup
    public void examine() throws IOException {
        Rules rules = Rules.bundled();
        BookResult.Read book = (BookResult.Read) BookReader.read(SAMPLE.resolve("appointments.csv"));
        DeliveryFacts facts =
                new DeliveryFacts(Optional.empty(), "sixteen bytes...".getBytes(StandardCharsets.US_ASCII), List.of());
        Findings findings = new Inspector(rules).inspect(Files.readAllBytes(SAMPLE.resolve(message + ".eml")), facts);
        assessor = new Assessor(rules);
        input = new SmallInbox(rules, OpenTests.of(book.book().tests()), List.of(), Set.of())
                .take(findings)
                .input();
    }

    @Benchmark
    public Assessment assess() {
        return assessor.assess(input);
    }
}
