package org.tidegate.examination.timing;

import java.time.Instant;
import java.util.Optional;
import org.tidegate.finding.Clock;
import org.tidegate.finding.Clue;
import org.tidegate.finding.Event;

/**
 * One clue as an interval on its clock's lane.
 *
 * @param from empty: it bounds only from above
 * @param to empty: it bounds only from below
 * @param deciding whether a verdict's proof uses it
 */
record DrawnClue(Clock clock, Event event, Optional<Instant> from, Optional<Instant> to, boolean deciding) {

    /** Empty for clues that are no point on a clock, such as the order of things. */
    static Optional<DrawnClue> of(Clue clue, boolean deciding) {
        boolean ofTrueTime = clue.earlier().equals(Event.EPOCH) && !clue.later().equals(Event.DEVICE_ZERO);
        boolean ofDisplay = clue.earlier().equals(Event.DEVICE_ZERO);
        if (!ofTrueTime && !ofDisplay) {
            return Optional.empty();
        }
        return Optional.of(new DrawnClue(
                clue.clock(),
                clue.later(),
                clue.lo().map(Instant.EPOCH::plus),
                clue.hi().map(Instant.EPOCH::plus),
                deciding));
    }

    /** A stamp to the second, rather than a span. */
    boolean isPoint() {
        return from.isPresent() && to.isPresent() && from.get().plusSeconds(1).isAfter(to.get());
    }

    /** Where on the scale it stands. */
    Instant anchor() {
        return from.or(() -> to).orElse(Instant.EPOCH);
    }
}
