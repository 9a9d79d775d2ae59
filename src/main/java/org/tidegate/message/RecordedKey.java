package org.tidegate.message;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A DKIM key as the name server gave it when the message was taken.
 *
 * @param selector tag {@code s=}
 * @param domain tag {@code d=}
 * @param record the TXT record at {@code selector._domainkey.domain} (RFC 6376 §3.6.2)
 */
public record RecordedKey(String selector, String domain, String record) {

    private static final Pattern LINE = Pattern.compile("(\\S+?)\\._domainkey\\.(\\S+)\\t+(.+)");

    /** Reads {@code selector._domainkey.domain}, a tab and the TXT record; empty where the line is none. */
    public static Optional<RecordedKey> parse(String line) {
        Matcher m = LINE.matcher(line.strip());
        return m.matches() ? Optional.of(new RecordedKey(m.group(1), m.group(2), m.group(3))) : Optional.empty();
    }

    /** The keys as a source for {@link MessageReader}. */
    public static KeySource source(List<RecordedKey> keys) {
        return (selector, domain) -> keys.stream()
                .filter(k -> k.selector().equals(selector) && k.domain().equalsIgnoreCase(domain))
                .map(RecordedKey::record)
                .findFirst();
    }
}
