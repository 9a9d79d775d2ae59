package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Times and spans as a person would say them, in the clinic's zone.
 *
 * @param day the day of the test: only other days are named
 */
record Wording(ZoneId zone, LocalDate day) {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    private static final DateTimeFormatter DATED =
            DateTimeFormatter.ofPattern("HH:mm:ss 'on' d MMMM uuuu", Locale.ENGLISH);

    /** {@code 07:33:01 (+01:00)}, {@code 07:33:01 on 5 May 2026 (+01:00)}. */
    String time(Instant instant) {
        ZoneOffset offset = zone.getRules().getOffset(instant);
        return wall(LocalDateTime.ofInstant(instant, offset)) + " (" + offset(offset) + ")";
    }

    /** {@code 07:33:01}, {@code 07:33:01 on 5 May 2026}. */
    String wall(LocalDateTime wall) {
        return (wall.toLocalDate().equals(day) ? CLOCK : DATED).format(wall);
    }

    /** {@code +01:00}, {@code UTC}. */
    static String offset(ZoneOffset offset) {
        return offset.getTotalSeconds() == 0 ? "UTC" : offset.getId();
    }

    /** {@code 25 min 10 s}, {@code 3 h 2 min}, {@code 0 s}; without a sign, to the second; from two days on to the hour. */
    static String span(Duration duration) {
        long whole = Math.round(duration.abs().toMillis() / 1000.0);
        long seconds = whole < 2 * 86_400 ? whole : whole / 3600 * 3600;
        StringBuilder words = new StringBuilder();
        append(words, seconds / 86_400, "d");
        append(words, seconds % 86_400 / 3600, "h");
        append(words, seconds % 3600 / 60, "min");
        append(words, seconds % 60, "s");
        return words.isEmpty() ? "0 s" : words.toString();
    }

    static String sentence(String part) {
        return part.substring(0, 1).toUpperCase(Locale.ROOT) + part.substring(1);
    }

    static String within(String sentence) {
        return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }

    private static void append(StringBuilder words, long figure, String unit) {
        if (figure > 0) {
            words.append(words.isEmpty() ? "" : " ").append(figure).append(' ').append(unit);
        }
    }
}
