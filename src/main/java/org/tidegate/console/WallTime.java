package org.tidegate.console;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.web.server.ResponseStatusException;

/** Times as forms give them: wall times of the clinic, without an offset. */
final class WallTime {

    private WallTime() {}

    /** Of the hour that comes twice in autumn the first one counts. */
    static ZonedDateTime first(String written, ZoneId zone) {
        return parsed(written).atZone(zone).withEarlierOffsetAtOverlap();
    }

    /** Empty where the time comes twice or, in spring, not at all: then nobody can tell which moment is meant. */
    static Optional<ZonedDateTime> only(String written, ZoneId zone) {
        LocalDateTime wall = parsed(written);
        boolean clear = zone.getRules().getValidOffsets(wall).size() == 1;
        return clear ? Optional.of(wall.atZone(zone)) : Optional.empty();
    }

    private static LocalDateTime parsed(String written) {
        try {
            return LocalDateTime.parse(written);
        } catch (DateTimeParseException e) {
            throw new ResponseStatusException(HttpStatus.BAD_REQUEST, "That is no time.", e);
        }
    }
}
