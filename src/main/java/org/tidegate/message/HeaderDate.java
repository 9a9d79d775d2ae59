package org.tidegate.message;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * A date-time of a header field (RFC 5322 §3.3, obsolete forms of §4.3 included).
 *
 * @param wall the date and time as written
 * @param offset the stated offset; empty where the zone is absent or {@code -0000} ("unknown zone")
 */
public record HeaderDate(LocalDateTime wall, Optional<ZoneOffset> offset) {

    /** The instant meant; an unknown zone is read as UTC, as RFC 5322 §3.3 has it for {@code -0000}. */
    public Instant instant() {
        return wall.toInstant(offset.orElse(ZoneOffset.UTC));
    }
}
