package org.tidegate.store;

import java.time.Instant;
import java.util.Optional;
import org.tidegate.booking.TestKey;
import org.tidegate.booking.TestRecord;

/** Which letter reminded of which test. */
public final class Reminders {

    private final Tx tx;

    Reminders(Tx tx) {
        this.tx = tx;
    }

    /** @param letter number in the outbox; takes the place of one that was called back */
    public void put(TestRecord test, long letter) {
        tx.update(
                "INSERT INTO reminders (ref, attempt, slot, letter) VALUES (?, ?, ?, ?)"
                        + " ON CONFLICT (ref, attempt, slot) DO UPDATE SET letter = excluded.letter",
                test.key().ref(),
                test.attempt(),
                slot(test),
                letter);
    }

    public Optional<Long> letter(TestRecord test) {
        return tx.first(
                "SELECT letter FROM reminders WHERE ref = ? AND attempt = ? AND slot = ?",
                r -> r.number("letter"),
                test.key().ref(),
                test.attempt(),
                slot(test));
    }

    /** The test that the letter reminds of; empty where it is no such letter. */
    public Optional<TestKey> test(long letter) {
        return tx.first(
                "SELECT ref, attempt FROM reminders WHERE letter = ?",
                r -> new TestKey(r.text("ref"), r.small("attempt")),
                letter);
    }

    private static Instant slot(TestRecord test) {
        return test.appointment().slotStart().toInstant();
    }
}
