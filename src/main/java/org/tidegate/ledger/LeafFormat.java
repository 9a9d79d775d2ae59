package org.tidegate.ledger;

import java.time.temporal.ChronoUnit;
import java.util.Map;

/**
 * The bytes of a leaf: canonical JSON (RFC 8785) with {@code v} (1), {@code seq}, {@code time} (UTC, to the millisecond or
 * coarser as ISO 8601 prints it), {@code kind}, {@code who}, {@code codes} and {@code refs}. Final from the start.
 */
public final class LeafFormat {

    public static final int VERSION = 1;

    private LeafFormat() {}

    public static byte[] encode(LedgerEvent event) {
        return CanonicalJson.write(Map.of(
                "v", VERSION,
                "seq", event.sequence(),
                "time", event.time().truncatedTo(ChronoUnit.MILLIS).toString(),
                "kind", event.kind(),
                "who", event.who(),
                "codes", event.codes(),
                "refs", event.references()));
    }
}
