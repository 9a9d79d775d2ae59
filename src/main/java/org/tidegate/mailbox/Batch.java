package org.tidegate.mailbox;

import java.util.ArrayList;
import java.util.List;

/**
 * Messages fetched by one command.
 *
 * @param uids ascending
 * @param bytes their size together as the server states it
 */
record Batch(List<Long> uids, long bytes) {

    /** A message as the server announces it. */
    record Announced(long uid, long size) {}

    private static final int MOST_MESSAGES = 24;
    private static final long MOST_BYTES = 4L << 20;

    /** Beyond this a message is fetched in pieces, so that memory holds it once. */
    static final long LARGE = 8L << 20;

    /** Raw bytes are kept up to this; a larger message stays in its folder, unmarked, and is named at each look. */
    static final long MOST_KEPT = 150L << 20;

    boolean isLarge() {
        return bytes > LARGE;
    }

    static List<Batch> plan(List<Announced> announced) {
        List<Batch> batches = new ArrayList<>();
        List<Long> uids = new ArrayList<>();
        long bytes = 0;
        for (Announced a : announced) {
            if (!uids.isEmpty() && (uids.size() == MOST_MESSAGES || bytes + a.size() > MOST_BYTES)) {
                batches.add(new Batch(List.copyOf(uids), bytes));
                uids.clear();
                bytes = 0;
            }
            uids.add(a.uid());
            bytes += a.size();
        }
        if (!uids.isEmpty()) {
            batches.add(new Batch(List.copyOf(uids), bytes));
        }
        return batches;
    }
}
