package org.tidegate.ledger;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Map;

/**
 * A signed statement of the tree at one size.
 *
 * @param time when it was signed, to the millisecond
 * @param keyId which key signed: the first 16 hexadecimal digits of SHA-256 over the public key (X.509 form)
 * @param signature Ed25519 (RFC 8032) over {@link #signedBytes}, base64
 */
public record SignedHead(long size, Hash root, Instant time, String keyId, String signature) {

    /** What the signature covers: canonical JSON of all but itself. */
    public byte[] signedBytes() {
        return signedBytes(size, root, time, keyId);
    }

    static byte[] signedBytes(long size, Hash root, Instant time, String keyId) {
        return CanonicalJson.write(Map.of(
                "v",
                LeafFormat.VERSION,
                "size",
                size,
                "root",
                root.hex(),
                "time",
                time.truncatedTo(ChronoUnit.MILLIS).toString(),
                "key",
                keyId));
    }
}
