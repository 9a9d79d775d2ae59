package org.tidegate.store;

import java.time.OffsetDateTime;
import java.util.Optional;
import org.tidegate.booking.TestKey;
import org.tidegate.booking.TestRecord;
import org.tidegate.booking.TestRecord.Observed;

/**
 * What the observer wrote down of a test here. It stands over the book, and no import takes it away.
 *
 * @param timerStart when the observer started the timer (±1 min)
 * @param mark four characters to be written on the cassette
 */
public record Observation(TestKey test, Optional<OffsetDateTime> timerStart, Observed observed, Optional<String> mark) {

    /** The book's record with what was observed in place of what the book says. */
    TestRecord over(TestRecord booked) {
        return new TestRecord(
                booked.appointment(),
                booked.attempt(),
                booked.kit(),
                booked.lot(),
                booked.lotExpires(),
                timerStart.or(booked::timerStart),
                observed == Observed.UNSTATED ? booked.observed() : observed,
                mark.or(booked::mark));
    }
}
