package org.tidegate.examination.subject;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.SubjectReading;
import org.tidegate.rules.Rules;

/**
 * Fuzz target of the subject reader (Jazzer): whatever is written, the reader answers, and what it answers holds together.
 */
public final class SubjectFuzz {

    private static final SubjectReader READER = new SubjectReader(Rules.bundled());
    private static final Instant ARRIVED = Instant.parse("2026-05-04T09:00:00Z");

    private SubjectFuzz() {}

    /** Called by Jazzer. */
    public static void fuzzerTestOneInput(FuzzedDataProvider data) {
        check(data.consumeRemainingAsString());
    }

    /** @throws IllegalStateException for a reading that does not hold together */
    static void check(String subject) {
        StatedText text = new StatedText(Optional.of(subject), "", Optional.of(subject), Optional.of(subject), ARRIVED);
        List<SubjectReading> readings = READER.read(text);
        require(!readings.isEmpty(), "no reading at all");
        for (SubjectReading r : readings) {
            require(Double.isFinite(r.cost()), "a cost that is no number");
            require(
                    r.readable() == (r.name().isPresent() && r.testTime().isPresent()),
                    "readable without name or time");
            require(r.readable() || !r.problems().isEmpty(), "unreadable without a named problem");
            r.spans()
                    .forEach(s -> require(
                            0 <= s.start() && s.start() <= s.end() && s.end() <= subject.length(),
                            "a span outside the subject"));
        }
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new IllegalStateException(what);
        }
    }
}
