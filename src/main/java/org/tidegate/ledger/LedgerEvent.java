package org.tidegate.ledger;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One thing that was done: never personal data, only codes and keyed references.
 *
 * @param sequence its place in the log, from 0
 * @param time when, to the millisecond
 * @param kind what: {@code message-taken}, {@code assessed}, …
 * @param who the user's identifier, or {@code daemon}
 * @param codes why: discrepancy codes, reason codes, verdicts, in order
 * @param references what it is about, by name: message identifiers, salted or keyed hashes
 */
public record LedgerEvent(
        long sequence,
        Instant time,
        String kind,
        String who,
        List<String> codes,
        SortedMap<String, String> references) {

    public LedgerEvent {
        codes = List.copyOf(codes);
        references = Collections.unmodifiableSortedMap(new TreeMap<>(references));
    }
}
