package org.tidegate.store;

import java.time.Instant;
import java.util.Optional;
import org.tidegate.work.WorkItem;

/** Work that the daemon draws, what is due first; a drawn item is free again after its time. */
public final class WorkQueue {

    private final Tx tx;

    WorkQueue(Tx tx) {
        this.tx = tx;
    }

    /** Adds an item; where one of this kind and key waits already, nothing changes. */
    public void add(WorkItem.Kind kind, long key, Instant due) {
        tx.update(
                "INSERT INTO work (kind, key, due, free_from, tries) VALUES (?, ?, ?, 0, 0) ON CONFLICT DO NOTHING",
                kind.name(),
                key,
                due);
    }

    /** Draws the item that is due first and free. */
    public Optional<WorkItem> draw(Instant now, Instant until) {
        return tx.first(
                "UPDATE work SET free_from = ?, tries = tries + 1 WHERE id = (SELECT id FROM work WHERE free_from <= ?"
                        + " ORDER BY due, id LIMIT 1" + tx.dialect().skipLocked() + ") RETURNING id, kind, key, tries",
                r -> new WorkItem(
                        r.number("id"), WorkItem.Kind.valueOf(r.text("kind")), r.number("key"), r.small("tries") - 1),
                until,
                now);
    }

    public void done(WorkItem item) {
        tx.update("DELETE FROM work WHERE id = ?", item.id());
    }

    /** Puts an item back; until then nobody draws it. */
    public void retry(WorkItem item, Instant from, String problem) {
        tx.update("UPDATE work SET free_from = ?, problem = ? WHERE id = ?", from, problem, item.id());
    }

    /**
     * Frees at once what was drawn by a process that ended over it; what ended several processes waits for its time.
     *
     * @return how many items were freed
     */
    public int free(Instant now, int mostTries) {
        return tx.update(
                "UPDATE work SET free_from = 0 WHERE free_from > ? AND problem IS NULL AND tries < ?", now, mostTries);
    }

    public long waiting() {
        return tx.first("SELECT COUNT(*) AS n FROM work", r -> r.number("n")).orElse(0L);
    }
}
