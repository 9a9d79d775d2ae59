package org.tidegate.message;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads date-times of header fields: RFC 5322 §3.3 and §4.3, the ctime form, and RFC 3339. */
public final class HeaderDates {

    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

    /** RFC 5322 §4.3; every other alphabetic zone counts as {@code -0000}. */
    private static final Map<String, Integer> ZONES = Map.ofEntries(
            Map.entry("ut", 0),
            Map.entry("utc", 0),
            Map.entry("gmt", 0),
            Map.entry("z", 0),
            Map.entry("est", -5),
            Map.entry("edt", -4),
            Map.entry("cst", -6),
            Map.entry("cdt", -5),
            Map.entry("mst", -7),
            Map.entry("mdt", -6),
            Map.entry("pst", -8),
            Map.entry("pdt", -7));

    private static final String CLOCK =
            "(?<hour>\\d{1,2})\\s*:\\s*(?<minute>\\d{2})(?:\\s*:\\s*(?<second>\\d{2})(?:[.,]\\d+)?)?";
    private static final String ZONE = "(?:\\s*(?<zone>(?:GMT|UTC)?\\s?[+-]\\d{2}:?\\d{2}|[A-Za-z]{1,5}))?";

    private static final List<Pattern> FORMS = List.of(
            form("(?<day>\\d{1,2})[\\s-]+(?<month>[A-Za-z]{3})[a-z]*\\.?[\\s,-]+(?<year>\\d{2,4})[\\s,]+" + CLOCK
                    + ZONE),
            form("(?<month>[A-Za-z]{3})[a-z]*\\s+(?<day>\\d{1,2})\\s+" + CLOCK + ZONE
                    + "\\s+(?<year>\\d{4})(?:\\s+(?<zone2>[+-]\\d{4}))?"),
            form("(?<year>\\d{4})-(?<month>\\d{2})-(?<day>\\d{2})[T\\s]" + CLOCK + ZONE));

    /** Longer text is no date with comments but an attack on the patterns. */
    private static final int MOST_CHARS = 2_000;

    private HeaderDates() {}

    private static Pattern form(String regex) {
        return Pattern.compile("(?<![\\w:])" + regex + "(?![\\w:])");
    }

    /** The date-time that the text holds; empty where none can be read. Comments and a weekday are skipped, right or wrong. */
    public static Optional<HeaderDate> parse(String text) {
        String plain = Comments.strip(text.substring(0, Math.min(text.length(), MOST_CHARS)))
                .strip();
        for (Pattern form : FORMS) {
            Matcher m = form.matcher(plain);
            if (m.find()) {
                return read(m);
            }
        }
        return Optional.empty();
    }

    private static Optional<HeaderDate> read(Matcher m) {
        int month = month(m.group("month"));
        String seconds = m.group("second");
        int second = seconds == null ? 0 : Integer.parseInt(seconds);
        try {
            LocalDateTime wall = LocalDateTime.of(
                            year(m.group("year")),
                            month,
                            Integer.parseInt(m.group("day")),
                            Integer.parseInt(m.group("hour")),
                            Integer.parseInt(m.group("minute")),
                            Math.min(second, 59))
                    .plusSeconds(second == 60 ? 1 : 0);
            return second > 60 ? Optional.empty() : Optional.of(dated(wall, zoneText(m)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static HeaderDate dated(LocalDateTime wall, String zone) {
        return zone.equals("-0000") || zone.equals("-00:00")
                ? new HeaderDate(wall, Optional.empty(), Optional.of(ZoneOffset.UTC))
                : new HeaderDate(wall, zone(zone));
    }

    private static String zoneText(Matcher m) {
        String zone = m.group("zone");
        String late = m.pattern().pattern().contains("zone2") ? m.group("zone2") : null;
        return late != null ? late : zone == null ? "" : zone;
    }

    private static int month(String text) {
        return Character.isDigit(text.charAt(0))
                ? Integer.parseInt(text)
                : MONTHS.indexOf(text.toLowerCase(Locale.ROOT)) + 1;
    }

    /** RFC 5322 §4.3: two digits 00–49 mean 20xx, 50–99 and three digits add 1900. */
    private static int year(String text) {
        int year = Integer.parseInt(text);
        if (text.length() == 4) {
            return year;
        }
        return text.length() == 2 && year < 50 ? 2000 + year : 1900 + year;
    }

    private static Optional<ZoneOffset> zone(String text) {
        String zone = text.toLowerCase(Locale.ROOT).replace(":", "").replaceAll("^(gmt|utc)\\s?(?=[+-])", "");
        if (zone.isEmpty()) {
            return Optional.empty();
        }
        if (Character.isLetter(zone.charAt(0))) {
            return Optional.ofNullable(ZONES.get(zone)).map(ZoneOffset::ofHours);
        }
        int sign = zone.charAt(0) == '-' ? -1 : 1;
        int hours = Integer.parseInt(zone.substring(1, 3));
        int minutes = Integer.parseInt(zone.substring(3, 5));
        return hours > 18 || minutes > 59
                ? Optional.empty()
                : Optional.of(ZoneOffset.ofTotalSeconds(sign * Math.min(18 * 3600, hours * 3600 + minutes * 60)));
    }
}
