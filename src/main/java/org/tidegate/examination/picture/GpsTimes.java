package org.tidegate.examination.picture;

import com.drew.lang.Rational;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.GpsDirectory;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tidegate.finding.CaptureClue;

/** Satellite time: UTC by definition (EXIF 2.32 §4.6.6, tags 0x0007 and 0x001D). A time without a date is absent. */
final class GpsTimes {

    private static final Pattern DATE = Pattern.compile("\\s*(\\d{4})[:\\-](\\d\\d)[:\\-](\\d\\d)\\s*");

    private GpsTimes() {}

    static List<CaptureClue> of(Metadata metadata) {
        List<CaptureClue> clues = new ArrayList<>();
        for (Directory d : metadata.getDirectoriesOfType(GpsDirectory.class)) {
            Optional<LocalTime> time = time(d.getRationalArray(GpsDirectory.TAG_TIME_STAMP));
            date(d.getString(GpsDirectory.TAG_DATE_STAMP))
                    .flatMap(date -> time.map(date::atTime))
                    .map(GpsTimes::clue)
                    .ifPresent(clues::add);
        }
        return clues;
    }

    private static CaptureClue clue(LocalDateTime utc) {
        return new CaptureClue(
                CaptureClue.Kind.GPS, utc, Optional.of(ZoneOffset.UTC), "GPS 0x001D GPSDateStamp, 0x0007 GPSTimeStamp");
    }

    private static Optional<LocalDate> date(@Nullable String written) {
        Matcher m = DATE.matcher(written == null ? "" : written);
        if (!m.matches()) {
            return Optional.empty();
        }
        try {
            LocalDate date = LocalDate.of(
                    Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2)), Integer.parseInt(m.group(3)));
            // The satellites' own day zero is 6 January 1980: an unset receiver gives that.
            return date.getYear() < 1985 ? Optional.empty() : Optional.of(date);
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static Optional<LocalTime> time(Rational @Nullable [] hms) {
        if (hms == null || hms.length != 3) {
            return Optional.empty();
        }
        for (Rational r : hms) {
            if (r.getDenominator() == 0) {
                return Optional.empty();
            }
        }
        double seconds = hms[0].doubleValue() * 3600 + hms[1].doubleValue() * 60 + hms[2].doubleValue();
        boolean real = hms[0].doubleValue() < 24 && hms[1].doubleValue() < 60 && hms[2].doubleValue() < 60;
        if (!real || !(seconds >= 0 && seconds < 86_400)) {
            return Optional.empty();
        }
        return Optional.of(LocalTime.ofNanoOfDay(Math.round(seconds * 1000) * 1_000_000L % 86_400_000_000_000L));
    }
}
