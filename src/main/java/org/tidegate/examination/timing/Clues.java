package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.Clock;
import org.tidegate.finding.Clue;
import org.tidegate.finding.Event;

/** Short ways to make a {@link Constraint}. */
final class Clues {

    /** The clock that needs none: what is true of any mail. */
    static final Clock NATURE = new Clock(Clock.Kind.OWN_SERVER, "the order of things");

    /** Place in the evidence of what follows from the order of things. */
    static final String ORDER = "order of events";

    private Clues() {}

    /** {@code later} is not before {@code earlier}. */
    static Constraint order(Event earlier, Event later) {
        Clue clue = new Clue(
                earlier,
                later,
                Optional.of(Duration.ZERO),
                Optional.empty(),
                NATURE,
                ORDER,
                inOrder(earlier, later),
                List.of());
        return new Constraint(clue, 0, Rank.ORDER);
    }

    /** {@code the photo was taken before the message reached us}. */
    static String inOrder(Event earlier, Event later) {
        String then = earlier.kind() == Event.Kind.PHOTO
                ? happened(later)
                : happened(later).replace("the message", "it");
        return happened(earlier) + " before " + then;
    }

    static String happened(Event event) {
        return switch (event.kind()) {
            case EPOCH, DEVICE_ZERO -> "the clock began";
            case TEST -> "the test began";
            case PHOTO -> "the photo was taken";
            case SENT -> "the message was sent";
            case HOP -> "a mail server took the message over";
            case SIGNED -> "a mail server signed the message";
            case ARRIVED -> "the message reached us";
        };
    }

    /** A clue before it is placed in the network. */
    record Source(Clock clock, String place, String words, List<Assumption> leansOn, Duration tolerance, Rank rank) {

        /** The event lies within {@code from … to}, both inclusive. */
        Constraint at(Event event, Instant from, Instant to) {
            return between(
                    Event.EPOCH,
                    event,
                    Optional.of(Duration.between(Instant.EPOCH, from)),
                    Optional.of(Duration.between(Instant.EPOCH, to)));
        }

        /** The event does not lie before {@code from}. */
        Constraint notBefore(Event event, Instant from) {
            return between(Event.EPOCH, event, Optional.of(Duration.between(Instant.EPOCH, from)), Optional.empty());
        }

        /** The event does not lie after {@code to}. */
        Constraint notAfter(Event event, Instant to) {
            return between(Event.EPOCH, event, Optional.empty(), Optional.of(Duration.between(Instant.EPOCH, to)));
        }

        Constraint between(Event earlier, Event later, Optional<Duration> lo, Optional<Duration> hi) {
            Clue clue = new Clue(earlier, later, lo, hi, clock, place, words, leansOn);
            return new Constraint(clue, tolerance.toMillis(), rank);
        }
    }
}
