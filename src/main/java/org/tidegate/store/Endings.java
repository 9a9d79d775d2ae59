package org.tidegate.store;

import java.util.List;
import org.tidegate.work.Ending;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.UserId;

/** How submissions came to be closed, only ever appended. */
public final class Endings {

    private final Tx tx;

    Endings(Tx tx) {
        this.tx = tx;
    }

    public void append(Ending e) {
        tx.update(
                "INSERT INTO endings (submission, kind, reason_code, who, made) VALUES (?, ?, ?, ?, ?)",
                e.submission().value(),
                e.kind().name(),
                e.reasonCode(),
                e.who().value(),
                e.when());
    }

    /** In their order. */
    public List<Ending> of(SubmissionId id) {
        return tx.list(
                "SELECT kind, reason_code, who, made FROM endings WHERE submission = ? ORDER BY id",
                r -> new Ending(
                        id,
                        Ending.Kind.valueOf(r.text("kind")),
                        r.text("reason_code"),
                        new UserId(r.text("who")),
                        r.instant("made")),
                id.value());
    }
}
