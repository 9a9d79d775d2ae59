package org.tidegate.store;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import org.tidegate.booking.TestKey;
import org.tidegate.work.UserId;

/** The observer's records, only ever appended; the newest of a test counts. */
public final class Observations {

    private final Tx tx;

    Observations(Tx tx) {
        this.tx = tx;
    }

    public void append(Observation o, UserId who, Instant when) {
        tx.update(
                "INSERT INTO observations (ref, attempt, record, who, made) VALUES (?, ?, ?, ?, ?)",
                o.test().ref(),
                o.test().attempt(),
                StoredJson.write(o),
                who.value(),
                when);
    }

    /** The newest of each test. */
    public Map<TestKey, Observation> newest() {
        Map<TestKey, Observation> all = new HashMap<>();
        tx.list(
                        "SELECT record FROM observations ORDER BY id",
                        r -> StoredJson.read(r.text("record"), Observation.class))
                .forEach(o -> all.put(o.test(), o));
        return all;
    }
}
