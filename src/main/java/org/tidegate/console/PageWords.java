package org.tidegate.console;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.tidegate.rules.Rules;

/** Times as the pages say them: in the clinic's zone, the zone named, and how long from now. */
final class PageWords {

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm z", Locale.UK);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM HH:mm z", Locale.UK);

    private final ZoneId zone;

    PageWords(Rules rules) {
        this.zone = rules.timing().zone();
    }

    /** {@code 07:54 BST}. */
    String clock(Instant time) {
        return CLOCK.format(time.atZone(zone));
    }

    /** {@code Mon 4 May 07:54 BST}. */
    String dateAndTime(Instant time) {
        return DAY.format(time.atZone(zone));
    }

    /** {@code 14 min left}, {@code 2 h 05 min over}. */
    String left(Instant until, Instant now) {
        Duration d = Duration.between(now, until);
        return amount(d.abs()) + (d.isNegative() ? " over" : " left");
    }

    private static String amount(Duration d) {
        long minutes = d.toMinutes();
        if (minutes >= 48 * 60) {
            return minutes / (24 * 60) + " days";
        }
        return minutes >= 60
                ? minutes / 60 + " h " + String.format(Locale.ROOT, "%02d min", minutes % 60)
                : minutes + " min";
    }
}
