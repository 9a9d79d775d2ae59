package org.tidegate.cli;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;

/** A clock that stands where it was put: the demo puts it to the time at which each message arrived. */
final class StageClock extends Clock {

    private final AtomicReference<Instant> now;

    StageClock(Instant start) {
        now = new AtomicReference<>(start);
    }

    void put(Instant time) {
        now.set(time);
    }

    @Override
    public Instant instant() {
        return Objects.requireNonNull(now.get());
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return Clock.fixed(instant(), zone);
    }
}
