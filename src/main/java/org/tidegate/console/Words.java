package org.tidegate.console;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.springframework.context.MessageSource;

/** The words of the pages in one language; times in the clinic's zone, the zone named, and how long from now. */
final class Words {

    private static final int MANY_HOURS = 48;

    private final ZoneId zone;
    private final Locale locale;
    private final MessageSource messages;

    Words(ZoneId zone, Locale locale, MessageSource messages) {
        this.zone = zone;
        this.locale = locale;
        this.messages = messages;
    }

    /** The message of that key; the key itself where there is none. */
    String say(String key, Object... values) {
        return String.valueOf(messages.getMessage(key, values, key, locale));
    }

    /** The first key that there is a message for. */
    String sayFirst(String key, String otherwise) {
        String found = messages.getMessage(key, null, "", locale);
        return found == null || found.isEmpty() ? say(otherwise) : found;
    }

    /** {@code 07:54 BST}. In the hour that comes twice in autumn, BST and GMT tell the two apart. */
    String clock(Instant time) {
        return format("HH:mm z", time);
    }

    /** {@code Mon 4 May 07:54 BST}. */
    String dateAndTime(Instant time) {
        return format("EEE d MMM HH:mm z", time);
    }

    /** {@code Mon 4 May 2026 07:54:11 BST}: for evidence. */
    String exactly(Instant time) {
        return format("EEE d MMM uuuu HH:mm:ss z", time);
    }

    private String format(String pattern, Instant time) {
        return DateTimeFormatter.ofPattern(pattern, locale).format(time.atZone(zone));
    }

    /** {@code 14 min left}, {@code 2 h 05 min over}. */
    String left(Instant until, Instant now) {
        Duration d = Duration.between(now, until);
        return say(d.isNegative() ? "time.over" : "time.left", amount(d.abs()));
    }

    /** {@code 12 min ago}, {@code in 3 h 05 min}. */
    String relative(Instant time, Instant now) {
        Duration d = Duration.between(time, now);
        if (d.abs().toMinutes() == 0) {
            return say("time.now");
        }
        return say(d.isNegative() ? "time.ahead" : "time.ago", amount(d.abs()));
    }

    /** {@code Mon 4 May 07:54 BST, 12 min ago}. */
    String both(Instant time, Instant now) {
        return dateAndTime(time) + ", " + relative(time, now);
    }

    String amount(Duration d) {
        if (d.toHours() >= MANY_HOURS) {
            return say("time.days", Long.toString(d.toDays()));
        }
        return d.toHours() > 0
                ? say("time.hours", Long.toString(d.toHours()), String.format(Locale.ROOT, "%02d", d.toMinutesPart()))
                : say("time.minutes", Long.toString(d.toMinutes()));
    }

    /** {@code 2 min 05 s}. */
    String exactAmount(Duration d) {
        return (d.isNegative() ? "−" : "") + d.abs().toMinutes() + " min "
                + String.format(Locale.ROOT, "%02d s", d.abs().toSecondsPart());
    }

    ZoneId zone() {
        return zone;
    }
}
