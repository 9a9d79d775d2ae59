package org.tidegate.examination.linkage;

import java.util.List;
import java.util.Optional;
import org.tidegate.booking.TestKey;

/**
 * Which test a message is about.
 *
 * @param test the one test; present exactly where the outcome is {@code MATCH}
 * @param probability of the best candidate; 0 where there is none
 * @param candidates the likeliest first
 */
public record LinkageResult(Outcome outcome, Optional<TestKey> test, double probability, List<Candidate> candidates) {

    public enum Outcome {
        /** One test, almost surely, and no rival near. */
        MATCH,
        /** Rivals, or not sure enough. */
        AMBIGUOUS,
        /** No open test fits. */
        NONE
    }
}
