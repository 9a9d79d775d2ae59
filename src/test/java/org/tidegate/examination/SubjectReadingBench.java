package org.tidegate.examination;

import java.util.List;
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
import org.tidegate.examination.subject.StatedText;
import org.tidegate.examination.subject.SubjectReader;
import org.tidegate.finding.SubjectReading;
import org.tidegate.rules.Rules;

/** Lines a second that one core reads, over our own corpus in turn. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class SubjectReadingBench {

    private final SubjectReader reader = new SubjectReader(Rules.bundled());
    private final List<StatedText> texts =
            CorpusLine.own().stream().map(CorpusLine::text).toList();
    private int next;

    @Benchmark
    public List<SubjectReading> read() {
        next = (next + 1) % texts.size();
        return reader.read(texts.get(next));
    }
}
