package org.tidegate.message;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * A date-time of a header field (RFC 5322 §3.3, obsolete forms of §4.3 included).
 *
 * @param wall the date and time as written
 * @param offset the stated offset; empty where the zone is absent, unknown or {@code -0000}
 * @param reckonedIn UTC for {@code -0000}, which gives the time without telling the writer's own zone; else empty
 */
public record HeaderDate(LocalDateTime wall, Optional<ZoneOffset> offset, Optional<ZoneOffset> reckonedIn) {

    /** A date-time that is not written with {@code -0000}. */
    public HeaderDate(LocalDateTime wall, Optional<ZoneOffset> offset) {
        this(wall, offset, Optional.empty());
    }

    /** The instant meant; an unknown zone is read as UTC, as RFC 5322 §4.3 has it. */
    public Instant instant() {
        return wall.toInstant(offset.orElse(ZoneOffset.UTC));
    }

    /** The instant, where what is written leaves no doubt of it. */
    public Optional<Instant> known() {
        return offset.or(() -> reckonedIn).map(wall::toInstant);
    }
}
