package org.tidegate.store;

import java.util.Optional;
import org.tidegate.booking.TestKey;
import org.tidegate.booking.TestRecord;
import org.tidegate.booking.TestRecord.Observed;

/**
 * A further attempt in an appointment, as people record it here: a test beside those of the book.
 *
 * @param kit of the second cassette
 * @param lot of the second cassette, where it is written down
 */
public record Repeat(TestKey test, String kit, Optional<String> lot) {

    /** The test that it makes of the appointment; when it began is the observer's record. */
    TestRecord after(TestRecord before) {
        return new TestRecord(
                before.appointment(),
                test.attempt(),
                kit,
                lot,
                lot.equals(before.lot()) ? before.lotExpires() : Optional.empty(),
                Optional.empty(),
                Observed.UNSTATED,
                Optional.empty());
    }
}
