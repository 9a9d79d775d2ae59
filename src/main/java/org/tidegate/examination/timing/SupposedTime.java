package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.tidegate.finding.Event;

/** "What if it happened then?": a trial clue that enters no verdict. */
final class SupposedTime {

    private SupposedTime() {}

    static Constraint of(Event event, Instant time) {
        return new Clues.Source(Clues.NATURE, "supposed", "supposed", List.of(), Duration.ZERO, Rank.RECORDED)
                .at(event, time, time);
    }
}
