package org.tidegate.mailbox;

import java.time.Duration;

/** Waiting, injected so that tests need not wait. */
@FunctionalInterface
public interface Pause {

    void of(Duration length) throws InterruptedException;

    /** Really waits. */
    static Pause sleeping() {
        return length -> Thread.sleep(length.toMillis());
    }
}
