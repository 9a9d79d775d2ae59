package org.tidegate.report;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times in reports: clock times of one zone, the zone named. */
record Clocks(ZoneId zone) {

    /** {@code 07:54 BST}. */
    String clock(Instant t) {
        return DateTimeFormatter.ofPattern("HH:mm z", Locale.UK).format(t.atZone(zone));
    }

    /** {@code Mon 4 May 2026 07:54 BST}. */
    String day(Instant t) {
        return DateTimeFormatter.ofPattern("EEE d MMM uuuu HH:mm z", Locale.UK).format(t.atZone(zone));
    }

    /** RFC 3339 with the offset. */
    String exact(Instant t) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(t.atZone(zone));
    }

    /** Minutes, from an hour on hours and minutes. */
    static String amount(Instant from, Instant until) {
        Duration d = Duration.between(from, until);
        return d.toHours() == 0
                ? d.toMinutes() + " min"
                : d.toHours() + " h " + String.format(Locale.ROOT, "%02d min", d.toMinutesPart());
    }
}
