package org.tidegate.booking;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * One kit used in an appointment: a row of the book.
 *
 * @param timerStart when the observer started the timer (±1 min)
 * @param mark four characters that the observer gave to be written on the cassette
 * @param lotExpires the last day on which the lot may be used
 */
public record TestRecord(
        Appointment appointment,
        int attempt,
        String kit,
        Optional<String> lot,
        Optional<LocalDate> lotExpires,
        Optional<OffsetDateTime> timerStart,
        Observed observed,
        Optional<String> mark) {

    public enum Observed {
        YES,
        NO,
        /** The book does not say: never treated as NO. */
        UNSTATED
    }

    public TestKey key() {
        return new TestKey(appointment.ref(), attempt);
    }
}
