package org.tidegate.examination.timing;

import java.time.Instant;

/** A time in which our own mail was down, from the outage register; both ends inclusive. */
public record Outage(Instant from, Instant to) {

    /** Whether any moment of {@code from … to} lies in it. */
    public boolean touches(Instant start, Instant end) {
        return !from.isAfter(end) && !to.isBefore(start);
    }
}
