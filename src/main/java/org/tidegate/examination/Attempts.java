package org.tidegate.examination;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.linkage.Candidate;
import org.tidegate.examination.linkage.FieldWeight;
import org.tidegate.examination.linkage.LinkageResult;

/**
 * Which attempt of an appointment a message is about. Matching prefers the earlier one where the person alone is named; once
 * the observer has started the timer of a later one, what comes in is about that, unless the stated time is nearer to the earlier.
 */
final class Attempts {

    private static final String FIELD = "attempt";

    private Attempts() {}

    /**
     * @param arrived when the message came
     * @param stated wall time of the clinic that the message states
     */
    static LinkageResult begun(
            LinkageResult found, Instant arrived, Optional<LocalDateTime> stated, OpenTests tests, ZoneId zone) {
        Optional<Instant> said = stated.map(s -> s.atZone(zone).toInstant());
        return found.test()
                .flatMap(tests::find)
                .flatMap(matched -> later(matched, arrived, said, tests))
                .map(attempt -> about(found, attempt))
                .orElse(found);
    }

    private static Optional<TestRecord> later(
            TestRecord matched, Instant arrived, Optional<Instant> said, OpenTests tests) {
        return tests.attempts(matched.appointment().ref()).stream()
                .filter(t -> t.attempt() > matched.attempt())
                .filter(t -> t.timerStart()
                        .filter(s -> !s.toInstant().isAfter(arrived))
                        .isPresent())
                .filter(t -> said.isEmpty() || distance(t, said.get()).compareTo(distance(matched, said.get())) < 0)
                .reduce((a, b) -> b);
    }

    private static Duration distance(TestRecord test, Instant said) {
        OffsetDateTime start = test.timerStart().orElse(test.appointment().slotStart());
        return Duration.between(start.toInstant(), said).abs();
    }

    /** The explanation stays; what the attempt rests on is added to it. */
    private static LinkageResult about(LinkageResult found, TestRecord attempt) {
        List<Candidate> candidates = new ArrayList<>();
        for (Candidate c : found.candidates()) {
            candidates.add(found.test().equals(Optional.of(c.test())) ? about(c, attempt) : c);
        }
        return new LinkageResult(found.outcome(), Optional.of(attempt.key()), found.probability(), candidates);
    }

    private static Candidate about(Candidate c, TestRecord attempt) {
        List<FieldWeight> weights = new ArrayList<>(c.weights());
        weights.add(new FieldWeight(
                FIELD, "begun", 0, "attempt " + attempt.attempt() + " had begun when the message arrived"));
        return new Candidate(
                attempt.key(), c.probability(), c.priorWeight(), List.copyOf(weights), c.total(), c.reading());
    }
}
