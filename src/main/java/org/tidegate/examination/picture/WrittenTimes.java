package org.tidegate.examination.picture;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Times as files write them. Whatever is no real time (zeros, blanks, day 259) is absent. */
final class WrittenTimes {

    /** EXIF 2.32 §4.6.4 DateTime; some programs write dashes or a T. */
    private static final Pattern EXIF =
            Pattern.compile("\\s*(\\d{4})[:\\-/](\\d\\d)[:\\-/](\\d\\d)[ T]+(\\d\\d):(\\d\\d):(\\d\\d)\\s*");

    /** ISO 8601 as XMP profiles it (ISO 16684-1 §8.2.1.2 Date); a bare date is no time. */
    private static final Pattern ISO = Pattern.compile("\\s*(\\d{4})-(\\d\\d)-(\\d\\d)[T ](\\d\\d):(\\d\\d)"
            + "(?::(\\d\\d)(?:[.,](\\d{1,9}))?\\d*)?\\s*(Z|[+-]\\d\\d:?\\d\\d)?\\s*");

    private static final Pattern OFFSET = Pattern.compile("\\s*(Z|[+-]\\d\\d:?\\d\\d)[\\s\\x00]*");

    /** No phone or digital camera wrote a file before. */
    private static final int FIRST_YEAR = 1985;

    private WrittenTimes() {}

    record Written(LocalDateTime wall, Optional<ZoneOffset> offset) {}

    static Optional<LocalDateTime> exif(@Nullable String time, @Nullable String subSeconds) {
        Matcher m = EXIF.matcher(time == null ? "" : time);
        return m.matches() ? wall(m, nanos(subSeconds)) : Optional.empty();
    }

    static Optional<Written> iso(@Nullable String time) {
        Matcher m = ISO.matcher(time == null ? "" : time);
        if (!m.matches()) {
            return Optional.empty();
        }
        Optional<ZoneOffset> offset = offset(m.group(8));
        return wall(m, nanos(m.group(7))).map(wall -> new Written(wall, offset));
    }

    static Optional<ZoneOffset> offset(@Nullable String written) {
        Matcher m = OFFSET.matcher(written == null ? "" : written);
        if (!m.matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(ZoneOffset.of(m.group(1)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** From groups year, month, day, hour, minute and, optionally, second. */
    static Optional<LocalDateTime> wall(Matcher m, int nanos) {
        try {
            int year = Integer.parseInt(m.group(1));
            int second = m.groupCount() < 6 || m.group(6) == null ? 0 : Integer.parseInt(m.group(6));
            LocalDateTime wall = LocalDateTime.of(
                    year,
                    Integer.parseInt(m.group(2)),
                    Integer.parseInt(m.group(3)),
                    Integer.parseInt(m.group(4)),
                    Integer.parseInt(m.group(5)),
                    second,
                    nanos);
            return year < FIRST_YEAR ? Optional.empty() : Optional.of(wall);
        } catch (DateTimeException | NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** SubSecTime holds the digits after the point: 5 is half a second. */
    private static int nanos(@Nullable String digits) {
        String d = digits == null ? "" : digits.strip();
        return d.matches("\\d{1,9}") ? Integer.parseInt((d + "00000000").substring(0, 9)) : 0;
    }
}
