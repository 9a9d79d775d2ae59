package org.tidegate.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.work.SubmissionId;

/** Until when we wait for a participant. */
public final class Waits {

    private final Tx tx;

    Waits(Tx tx) {
        this.tx = tx;
    }

    public void put(SubmissionId id, Instant since, Instant until) {
        tx.update(
                "INSERT INTO waits (submission, since, until) VALUES (?, ?, ?) ON CONFLICT (submission)"
                        + " DO UPDATE SET since = excluded.since, until = excluded.until",
                id.value(),
                since,
                until);
    }

    public Optional<Instant> until(SubmissionId id) {
        return tx.first("SELECT until FROM waits WHERE submission = ?", r -> r.instant("until"), id.value());
    }

    public void drop(SubmissionId id) {
        tx.update("DELETE FROM waits WHERE submission = ?", id.value());
    }

    /** Those whose time is up. */
    public List<SubmissionId> over(Instant now) {
        return tx.list(
                "SELECT submission FROM waits WHERE until <= ? ORDER BY until, submission",
                r -> new SubmissionId(r.number("submission")),
                now);
    }
}
