package org.tidegate.examination.timing;

import java.util.Optional;
import org.tidegate.finding.Clue;

/**
 * A clue as the solver takes it.
 *
 * @param tolerance milliseconds by which its clock may be off without being wrong: both ends give way by it where an {@code outside}
 *     is proven, neither does where an {@code inside} is
 * @param rank when it is believed
 */
record Constraint(Clue clue, long tolerance, Rank rank) {

    /** Lower end at the clock's word, in milliseconds. */
    long least() {
        return clue.lo().map(d -> d.toMillis()).orElse(-Network.FREE);
    }

    /** Upper end at the clock's word, in milliseconds. */
    long most() {
        return clue.hi().map(d -> d.toMillis()).orElse(Network.FREE);
    }

    Optional<Network.Edge> upper(EventIndex events, long most) {
        return most >= Network.FREE
                ? Optional.empty()
                : Optional.of(new Network.Edge(events.of(clue.earlier()), events.of(clue.later()), most, this));
    }

    Optional<Network.Edge> lower(EventIndex events, long least) {
        return least <= -Network.FREE
                ? Optional.empty()
                : Optional.of(new Network.Edge(events.of(clue.later()), events.of(clue.earlier()), -least, this));
    }
}
