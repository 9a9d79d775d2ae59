package org.tidegate.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.work.Claim;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.UserId;

/** Who has taken up what, and until when. */
public final class Claims {

    private final Tx tx;

    Claims(Tx tx) {
        this.tx = tx;
    }

    /** The claim that holds at this time. */
    public Optional<Claim> of(SubmissionId id, Instant now) {
        return tx.first(
                "SELECT submission, who, until FROM claims WHERE submission = ? AND until > ?",
                Claims::read,
                id.value(),
                now);
    }

    /** All that hold at this time. */
    public List<Claim> all(Instant now) {
        return tx.list(
                "SELECT submission, who, until FROM claims WHERE until > ? ORDER BY submission", Claims::read, now);
    }

    public void put(Claim claim) {
        tx.update(
                "INSERT INTO claims (submission, who, until) VALUES (?, ?, ?) ON CONFLICT (submission)"
                        + " DO UPDATE SET who = excluded.who, until = excluded.until",
                claim.submission().value(),
                claim.who().value(),
                claim.until());
    }

    public void drop(SubmissionId id) {
        tx.update("DELETE FROM claims WHERE submission = ?", id.value());
    }

    private static Claim read(Row r) throws java.sql.SQLException {
        return new Claim(new SubmissionId(r.number("submission")), new UserId(r.text("who")), r.instant("until"));
    }
}
