package org.tidegate.mailbox;

import java.util.List;

/** What takes messages in. Called by several threads at once. */
public interface Intake {

    /**
     * Takes one message in and returns only when its bytes are durable: after that the message is marked on the server.
     * Taking the same message or the same sighting again is harmless.
     *
     * @param sighting where it was seen
     * @param raw the whole message, byte for byte; the callee may keep it
     * @throws RuntimeException where it cannot be made durable; the watcher then stops, the message stays unmarked
     */
    Receipt take(Sighting sighting, byte[] raw);

    /**
     * Takes several messages that came together, so that they may share what being durable costs.
     *
     * @return a receipt each, in their order
     * @throws RuntimeException where one of them cannot be made durable: all of them stay unmarked
     */
    default List<Receipt> takeAll(List<Offer> offers) {
        return offers.stream().map(o -> take(o.sighting(), o.raw())).toList();
    }

    /** A message that is handed over: where it was seen, and its bytes, which the callee may keep. */
    record Offer(Sighting sighting, byte[] raw) {}

    /** What became of a message that was handed over. */
    enum Receipt {
        /** Bytes never seen before. */
        NEW,
        /** The same bytes had been taken before. */
        KNOWN
    }
}
