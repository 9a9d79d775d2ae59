package org.tidegate.finding;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * A verdict on one window with its proof.
 *
 * @param check {@code photo} or {@code sent}
 * @param level the level at which it was decided; empty where undetermined
 * @param assumptions what the verdict leans on, sorted
 * @param margin distance to the nearest edge of the window, positive inside; empty where undetermined
 * @param derivation the chain of clues that proves it, in words, in order
 */
public record WindowVerdict(
        Check check,
        Verdict verdict,
        Optional<Level> level,
        List<Assumption> assumptions,
        Optional<Duration> margin,
        List<DerivationStep> derivation) {

    public enum Check {
        PHOTO,
        SENT
    }

    /**
     * One edge of the proving path.
     *
     * @param from the event the step starts at
     * @param to the event the step ends at
     * @param bound {@code to − from ≤ bound}
     * @param clue the clue used, as {@code place}
     * @param words the step as a person would say it
     */
    public record DerivationStep(Event from, Event to, Duration bound, String clue, String words) {}
}
