package org.tidegate.message;

import java.util.List;

/**
 * A DKIM key as the name server gave it when the message was taken.
 *
 * @param selector tag {@code s=}
 * @param domain tag {@code d=}
 * @param record the TXT record at {@code selector._domainkey.domain} (RFC 6376 §3.6.2)
 */
public record RecordedKey(String selector, String domain, String record) {

    /** The keys as a source for {@link MessageReader}. */
    public static KeySource source(List<RecordedKey> keys) {
        return (selector, domain) -> keys.stream()
                .filter(k -> k.selector().equals(selector) && k.domain().equalsIgnoreCase(domain))
                .map(RecordedKey::record)
                .findFirst();
    }
}
