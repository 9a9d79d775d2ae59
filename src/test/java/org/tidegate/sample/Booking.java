package org.tidegate.sample;

import java.util.List;
import java.util.Locale;

/** One row of the sample morning's appointment book; every name is invented. Times are wall times of Monday 4 May 2026, Europe/London. */
record Booking(
        String ref,
        String given,
        String family,
        String born,
        String email,
        String clinic,
        String slot,
        String kit,
        String lot,
        String timer,
        String observed,
        String mark,
        String language,
        String lotExpires,
        String neededBy) {

    static final String HEADER =
            "ref,given_name,family_name,date_of_birth,email,clinic,slot_start,slot_end,kit,lot,timer_start,observed,mark,"
                    + "language,lot_expires,needed_by";

    static Booking of(String ref, String given, String family, String email, String clinic, String slot) {
        return new Booking(
                ref,
                given,
                family,
                "1988-03-14",
                email,
                clinic,
                slot,
                "SKERRY-20",
                "SK2605A",
                "",
                "",
                "",
                "en",
                "2026-12-31",
                "");
    }

    Booking timer(String wall) {
        return new Booking(
                ref,
                given,
                family,
                born,
                email,
                clinic,
                slot,
                kit,
                lot,
                at(wall),
                "yes",
                mark,
                language,
                lotExpires,
                neededBy);
    }

    Booking born(String date) {
        return new Booking(
                ref,
                given,
                family,
                date,
                email,
                clinic,
                slot,
                kit,
                lot,
                timer,
                observed,
                mark,
                language,
                lotExpires,
                neededBy);
    }

    Booking language(String tag) {
        return new Booking(
                ref,
                given,
                family,
                born,
                email,
                clinic,
                slot,
                kit,
                lot,
                timer,
                observed,
                mark,
                tag,
                lotExpires,
                neededBy);
    }

    Booking lot(String name, String expires) {
        return new Booking(
                ref, given, family, born, email, clinic, slot, kit, name, timer, observed, mark, language, expires,
                neededBy);
    }

    Booking kit(String name) {
        return new Booking(
                ref,
                given,
                family,
                born,
                email,
                clinic,
                slot,
                name,
                lot,
                timer,
                observed,
                mark,
                language,
                lotExpires,
                neededBy);
    }

    Booking notObserved() {
        return new Booking(
                ref,
                given,
                family,
                born,
                email,
                clinic,
                slot,
                kit,
                lot,
                timer,
                "no",
                mark,
                language,
                lotExpires,
                neededBy);
    }

    String name() {
        return given + " " + family;
    }

    String csv() {
        int minute = Integer.parseInt(slot.substring(0, 2)) * 60 + Integer.parseInt(slot.substring(3)) + 15;
        String end = String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60);
        return String.join(
                ",",
                List.of(
                        ref,
                        given,
                        family,
                        born,
                        email,
                        clinic,
                        at(slot + ":00"),
                        at(end + ":00"),
                        kit,
                        lot,
                        timer,
                        observed,
                        mark,
                        language,
                        lotExpires,
                        neededBy));
    }

    private static String at(String wall) {
        return wall.isEmpty() ? "" : "2026-05-04T" + wall + "+01:00";
    }
}
