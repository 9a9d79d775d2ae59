package org.tidegate.examination.timing;

import java.time.Duration;
import org.tidegate.finding.Event;
import org.tidegate.finding.WindowVerdict.Check;

/**
 * Does {@code later − earlier} lie within {@code least … most}? All figures in milliseconds.
 *
 * @param least {@code −FREE} where only the end counts
 * @param grace by which both edges are widened
 */
record Question(Check check, Event earlier, Event later, long least, long most, long grace) {

    static Question between(Check check, Event earlier, Event later, Duration least, Duration most, Duration grace) {
        return new Question(check, earlier, later, least.toMillis(), most.toMillis(), grace.toMillis());
    }

    static Question notLater(Check check, Event earlier, Event later, Duration most) {
        return new Question(check, earlier, later, -Network.FREE, most.toMillis(), 0);
    }

    boolean hasStart() {
        return least > -Network.FREE;
    }

    long widenedLeast() {
        return hasStart() ? least - grace : least;
    }

    long widenedMost() {
        return most + grace;
    }
}
