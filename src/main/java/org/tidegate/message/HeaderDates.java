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

/** Reads date-times of header fields: RFC 5322 §3.3, its obsolete forms (§4.3), and the ctime form that old servers wrote. */
public final class HeaderDates {

    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

    /** RFC 5322 §4.3; BST and IST are no obs-zone but occur in comments only, which are removed. */
    private static final Map<String, Integer> ZONES = Map.of(
            "ut", 0, "gmt", 0, "utc", 0, "est", -5, "edt", -4, "cst", -6, "cdt", -5, "mst", -7, "mdt", -6, "pst", -8);

    private static final Pattern RFC = Pattern.compile(
            "(?:[a-z]{3,9}\\s*,?\\s*)?(\\d{1,2})[\\s-]+([a-z]{3})[a-z]*[\\s-]+(\\d{2,4})\\s+(\\d{1,2})\\s*:\\s*(\\d{2})(?:\\s*:\\s*(\\d{2}))?\\s*([+-]\\d{4}|[a-z]{1,5})?.*");

    private static final Pattern CTIME = Pattern.compile(
            "(?:[a-z]{3}\\s*,?\\s+)?([a-z]{3})[a-z]*\\s+(\\d{1,2})\\s+(\\d{1,2}):(\\d{2})(?::(\\d{2}))?\\s+(?:([+-]\\d{4}|[a-z]{1,5})\\s+)?(\\d{4})(?:\\s+([+-]\\d{4}|[a-z]{2,5}))?.*");

    private HeaderDates() {}

    /** Empty where nobody could tell which instant is meant. */
    public static Optional<HeaderDate> parse(String text) {
        String plain = withoutComments(text).toLowerCase(Locale.ROOT).strip();
        Matcher m = RFC.matcher(plain);
        if (m.matches()) {
            return date(m.group(3), m.group(2), m.group(1), m.group(4), m.group(5), m.group(6), m.group(7));
        }
        Matcher c = CTIME.matcher(plain);
        if (c.matches()) {
            String zone = c.group(6) != null ? c.group(6) : c.group(8);
            return date(c.group(7), c.group(1), c.group(2), c.group(3), c.group(4), c.group(5), zone);
        }
        return Optional.empty();
    }

    private static Optional<HeaderDate> date(
            String year,
            String month,
            String day,
            String hour,
            String minute,
            @org.jspecify.annotations.Nullable String second,
            @org.jspecify.annotations.Nullable String zone) {
        try {
            int s = second == null ? 0 : Math.min(59, Integer.parseInt(second));
            LocalDateTime wall = LocalDateTime.of(
                    year(year),
                    MONTHS.indexOf(month) + 1,
                    Integer.parseInt(day),
                    Integer.parseInt(hour),
                    Integer.parseInt(minute),
                    s);
            return Optional.of(new HeaderDate(wall, zone == null ? Optional.empty() : offset(zone)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** RFC 5322 §4.3: 00–49 are 20xx, 50–99 and three digits are added to 1900. */
    private static int year(String digits) {
        int y = Integer.parseInt(digits);
        if (digits.length() == 2) {
            return y < 50 ? 2000 + y : 1900 + y;
        }
        return digits.length() == 3 ? 1900 + y : y;
    }

    /** {@code -0000} and unknown words give no offset (RFC 5322 §3.3, §4.3). */
    private static Optional<ZoneOffset> offset(String zone) {
        Integer hours = zone.equals("pdt") ? Integer.valueOf(-7) : ZONES.get(zone);
        if (hours != null) {
            return Optional.of(ZoneOffset.ofHours(hours));
        }
        if (zone.equals("z")) {
            return Optional.of(ZoneOffset.UTC);
        }
        if (!zone.matches("[+-]\\d{4}") || zone.equals("-0000")) {
            return Optional.empty();
        }
        int minutes = Integer.parseInt(zone.substring(1, 3)) * 60 + Integer.parseInt(zone.substring(3));
        return Optional.of(ZoneOffset.ofTotalSeconds((zone.charAt(0) == '-' ? -1 : 1) * minutes * 60));
    }

    /** RFC 5322 §3.2.2: comments nest and may stand anywhere. */
    static String withoutComments(String text) {
        StringBuilder out = new StringBuilder();
        int depth = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\\' && i + 1 < text.length()) {
                i++;
            } else if (c == '(') {
                depth++;
            } else if (c == ')' && depth > 0) {
                depth--;
            } else if (depth == 0) {
                out.append(c);
            }
        }
        return out.toString().replaceAll("\\s+", " ");
    }
}
