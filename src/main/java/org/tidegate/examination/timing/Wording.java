package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times and spans as a person would say them, in the clinic's zone. */
record Wording(ZoneId zone) {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss 'on' d MMMM", Locale.ENGLISH);

    /** {@code 07:33:01 on 4 May (+01:00)}. */
    String time(Instant instant) {
        ZoneOffset offset = zone.getRules().getOffset(instant);
        String shown = offset.getTotalSeconds() == 0 ? "UTC" : offset.getId();
        return CLOCK.format(instant.atOffset(offset)) + " (" + shown + ")";
    }

    /** {@code 25 min 10 s}, {@code 3 h 2 min}, {@code 0 s}; without a sign. */
    static String span(Duration duration) {
        long seconds = Math.round(duration.abs().toMillis() / 1000.0);
        long hours = seconds / 3600;
        long minutes = seconds % 3600 / 60;
        StringBuilder words = new StringBuilder();
        append(words, hours, "h");
        append(words, minutes, "min");
        append(words, seconds % 60, "s");
        return words.isEmpty() ? "0 s" : words.toString();
    }

    private static void append(StringBuilder words, long figure, String unit) {
        if (figure > 0) {
            words.append(words.isEmpty() ? "" : " ").append(figure).append(' ').append(unit);
        }
    }
}
