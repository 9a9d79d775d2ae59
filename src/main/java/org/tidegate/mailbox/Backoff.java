package org.tidegate.mailbox;

import java.time.Duration;

/** Waits between tries: doubling from one second to a minute. */
final class Backoff {

    private static final Duration LONGEST = Duration.ofMinutes(1);

    private int failures;

    void succeeded() {
        failures = 0;
    }

    int failures() {
        return failures;
    }

    Duration failed() {
        Duration wait = Duration.ofSeconds(1L << Math.min(failures, 6));
        failures++;
        return wait.compareTo(LONGEST) > 0 ? LONGEST : wait;
    }
}
