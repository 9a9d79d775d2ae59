package org.tidegate.store;

import java.time.Instant;
import java.util.List;
import org.tidegate.work.UserId;

/** The repeats that people recorded: each attempt once. */
public final class Repeats {

    private final Tx tx;

    Repeats(Tx tx) {
        this.tx = tx;
    }

    public void add(Repeat repeat, UserId who, Instant when) {
        tx.update(
                "INSERT INTO repeats (ref, attempt, record, who, made) VALUES (?, ?, ?, ?, ?)",
                repeat.test().ref(),
                repeat.test().attempt(),
                StoredJson.write(repeat),
                who.value(),
                when);
    }

    /** The first attempts first. */
    List<Repeat> all() {
        return tx.list(
                "SELECT record FROM repeats ORDER BY attempt, ref",
                r -> StoredJson.read(r.text("record"), Repeat.class));
    }
}
