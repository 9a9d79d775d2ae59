package org.tidegate.examination.timing;

import java.time.Duration;
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
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.tidegate.finding.Event;

/** One network of 30 clues (goal: under 50 µs) and a whole judgement with a zone to find (goal: well under 2 ms). */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
public class TimingBench {

    private final List<Constraint> clues = consistent(new Random(30));
    private final TimeJudge judge = new TimeJudge(Scene.RULES.timing());
    private final TimeCase anyZone = Scene.timer("07:00:00+01:00")
            .program("Brae Webmail 3.2")
            .arrived("07:26:12+01:00")
            .received("smtp.example.org", "192.0.2.9", "07:26:02+01:00")
            .photo("Ostrea", "Ostrea 3", Scene.exif("07:25:05"))
            .build();

    @Benchmark
    public Object networkOf30Clues() {
        return new CaseRun(clues, FewerCluesTest.WORDING).beliefs();
    }

    @Benchmark
    public Object judgementInAnyZone() {
        return judge.judge(anyZone);
    }

    /** Thirty clues of every rank on eight events, all true. */
    private static List<Constraint> consistent(Random random) {
        List<Constraint> clues = new ArrayList<>();
        for (int c = 0; c < 30; c++) {
            int a = random.nextInt(8);
            int b = (a + 1 + random.nextInt(7)) % 8;
            Duration distance = Duration.ofMinutes(10L * (b - a));
            Rank rank = Rank.values()[c % Rank.values().length];
            clues.add(new Clues.Source(Clues.NATURE, "clue " + c, "clue", List.of(), Duration.ofMinutes(2), rank)
                    .between(
                            Event.photo(a),
                            Event.photo(b),
                            Optional.of(distance.minusSeconds(random.nextInt(200))),
                            Optional.of(distance.plusSeconds(random.nextInt(200)))));
        }
        return clues;
    }
}
