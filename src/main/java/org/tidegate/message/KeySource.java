package org.tidegate.message;

import java.util.Optional;

/** Public keys of senders' domains as they were when a message was taken: recorded, so that a verdict can be derived again. */
@FunctionalInterface
public interface KeySource {

    /** Nothing was recorded. */
    KeySource NONE = (selector, domain) -> Optional.empty();

    /** The TXT record at {@code selector._domainkey.domain} (RFC 6376 §3.6.2), where it was recorded. */
    Optional<String> record(String selector, String domain);
}
