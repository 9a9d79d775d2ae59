package org.tidegate.examination.linkage;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
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
import org.tidegate.booking.Appointment;
import org.tidegate.booking.TestRecord;

/** One message against many open tests, all of one day; names drawn with the skew of real ones (a few are very common). */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 4)
@Fork(value = 1, jvmArgs = "-Xmx3g")
public class MatchingBench {

    private static final String[] SYLLABLES = {
        "ka", "lo", "mi", "ra", "ven", "tor", "sha", "bel", "ni", "du", "gar", "hol", "wen", "pri", "sten", "qua", "ol",
        "fer", "yan", "zu"
    };

    @Param({"1000", "1000000"})
    public int tests;

    private Linker linker = Books.linker();
    private TestIndex index = TestIndex.of(List.of());
    private List<Statement> statements = List.of();
    private int next;

    @Setup
    public void fill() {
        Random random = new Random(20260504);
        List<TestRecord> all = new ArrayList<>(tests);
        for (int i = 0; i < tests; i++) {
            all.add(test(i, random));
        }
        index = TestIndex.of(all);
        System.out.printf(
                "%n%d tests: the index holds %.1f bytes a test beside the records%n",
                tests, index.bytes() / (double) tests);
        List<Statement> some = new ArrayList<>();
        for (int i = 0; i < 1024; i++) {
            some.add(statement(all.get(random.nextInt(tests)).appointment(), random));
        }
        statements = some;
    }

    @Benchmark
    public LinkageResult link() {
        next = (next + 1) & 1023;
        return linker.link(statements.get(next), index);
    }

    private static TestRecord test(int i, Random random) {
        OffsetDateTime start = OffsetDateTime.parse("2026-05-04T04:00:00+01:00").plusMinutes(20L * random.nextInt(50));
        String given = name(2, random);
        String family = name(3, random);
        Appointment a = new Appointment(
                "R-" + i,
                given,
                family,
                Optional.of(LocalDate.of(1960 + random.nextInt(45), 1 + random.nextInt(12), 1 + random.nextInt(28))),
                Optional.of(given + "." + family + i + "@example.org"),
                List.of("QUAY", "PIER", "HELI").get(random.nextInt(3)),
                start,
                start.plusMinutes(20),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        return new TestRecord(
                a,
                1,
                "SKERRY-20",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                TestRecord.Observed.UNSTATED,
                Optional.empty());
    }

    /** Squared, the draw prefers the first syllables: the commonest names are borne by one in some hundreds. */
    private static String name(int syllables, Random random) {
        StringBuilder out = new StringBuilder();
        for (int s = 0; s < syllables; s++) {
            double draw = random.nextDouble();
            out.append(SYLLABLES[(int) (draw * draw * SYLLABLES.length)]);
        }
        return out.toString();
    }

    private static Statement statement(Appointment a, Random random) {
        LocalDateTime said = a.slotStart()
                .atZoneSameInstant(ZoneId.of("Europe/London"))
                .toLocalDateTime()
                .plusMinutes(random.nextInt(20));
        return new Statement(
                List.of(Readings.of(Optional.of(a.fullName()), Optional.of(said), Optional.of(a.clinic()))),
                Optional.of(a.givenName()),
                random.nextBoolean() ? a.email() : Optional.of("someone@example.net"),
                OffsetDateTime.parse("2026-05-04T21:30:00+01:00").toInstant());
    }
}
