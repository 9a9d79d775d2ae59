package org.tidegate.cli;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;

/** A time as an option gives it: RFC 3339, or a wall time of the clinic. */
final class GivenTime {

    private GivenTime() {}

    /** @throws Refusal where it is neither */
    static Instant of(String text, ZoneId clinic) {
        try {
            return OffsetDateTime.parse(text).toInstant();
        } catch (DateTimeException noOffset) {
            return wallTime(text, clinic);
        }
    }

    private static Instant wallTime(String text, ZoneId clinic) {
        try {
            return LocalDateTime.parse(text).atZone(clinic).toInstant();
        } catch (DateTimeException e) {
            throw new Refusal("'" + text + "' is no time; for example 2026-05-04T07:00 or 2026-05-04T07:00+01:00.", e);
        }
    }
}
