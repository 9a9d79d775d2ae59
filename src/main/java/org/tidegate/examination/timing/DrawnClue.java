package org.tidegate.examination.timing;

import java.time.Instant;
import java.util.Optional;
import org.tidegate.finding.Clue;
import org.tidegate.finding.Event;

/**
 * One clue as an interval on its clock's lane.
 *
 * @param from empty: it bounds only from above
 * @param to empty: it bounds only from below
 * @param deciding whether a verdict's proof uses it
 */
record DrawnClue(String lane, String what, Optional<Instant> from, Optional<Instant> to, boolean deciding) {

    /** Empty for clues that are no point on a clock, such as the order of things. */
    static Optional<DrawnClue> of(Clue clue, boolean deciding) {
        boolean ofTrueTime = clue.earlier().equals(Event.EPOCH) && !clue.later().equals(Event.DEVICE_ZERO);
        boolean ofDisplay = clue.earlier().equals(Event.DEVICE_ZERO);
        if (!ofTrueTime && !ofDisplay) {
            return Optional.empty();
        }
        return Optional.of(new DrawnClue(
                lane(clue),
                what(clue.later()),
                clue.lo().map(Instant.EPOCH::plus),
                clue.hi().map(Instant.EPOCH::plus),
                deciding));
    }

    /** A point to place the label at. */
    Instant anchor() {
        return from.or(() -> to).orElse(Instant.EPOCH);
    }

    private static String lane(Clue clue) {
        return switch (clue.clock().kind()) {
            case CLINIC -> "the clinic's record";
            case OWN_SERVER -> "our mail server";
            case OTHER_SERVER -> clue.clock().name();
            case PHONE -> "the clock of the " + clue.clock().name();
            case SATELLITE -> "GPS";
            case WORDS -> "the participant's words";
        };
    }

    private static String what(Event event) {
        return switch (event.kind()) {
            case TEST -> "test";
            case PHOTO -> "photo";
            case SENT -> "sent";
            case HOP -> "taken over";
            case SIGNED -> "signed";
            case ARRIVED -> "arrived";
            case EPOCH, DEVICE_ZERO -> "";
        };
    }
}
