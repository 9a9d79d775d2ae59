package org.tidegate.message;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A {@code DKIM-Signature} field (RFC 6376 §3.5) as read, not yet verified.
 *
 * @param domain tag {@code d=}
 * @param selector tag {@code s=}
 * @param time tag {@code t=}
 * @param signedHeaders tag {@code h=} in lower case
 * @param wholeBody whether all of the body is signed; a tag {@code l=} leaves room to append
 * @param verified whether it verified against a recorded key; false also where no key was recorded
 */
public record DkimSignature(
        String domain,
        String selector,
        Optional<Instant> time,
        List<String> signedHeaders,
        boolean wholeBody,
        boolean verified) {}
