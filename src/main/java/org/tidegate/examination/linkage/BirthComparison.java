package org.tidegate.examination.linkage;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/** Compares a date of birth as a machine-readable zone gives it with the booked one. */
final class BirthComparison {

    private static final DateTimeFormatter ZONE = DateTimeFormatter.ofPattern("yyMMdd", Locale.ROOT);

    private BirthComparison() {}

    enum Likeness {
        SAME,
        /** One of year, month, day is off, or day and month are exchanged: a slip of whoever booked. */
        ALIKE,
        DIFFERENT,
        /** Unknown on one side, or not whole (ICAO 9303-3 section 4.8). */
        OPEN
    }

    static Likeness compare(String zone, Optional<LocalDate> booked) {
        if (booked.isEmpty() || !zone.matches("[0-9]{6}")) {
            return Likeness.OPEN;
        }
        String book = ZONE.format(booked.get());
        if (zone.equals(book)) {
            return Likeness.SAME;
        }
        boolean exchanged = zone.equals(book.substring(0, 2) + book.substring(4) + book.substring(2, 4));
        return exchanged || partsOff(zone, book) == 1 ? Likeness.ALIKE : Likeness.DIFFERENT;
    }

    private static int partsOff(String a, String b) {
        int off = 0;
        for (int i = 0; i < 6; i += 2) {
            off += a.substring(i, i + 2).equals(b.substring(i, i + 2)) ? 0 : 1;
        }
        return off;
    }
}
