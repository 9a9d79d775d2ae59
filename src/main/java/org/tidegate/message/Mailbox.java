package org.tidegate.message;

import java.util.Locale;
import java.util.Optional;

/**
 * One mailbox of an address field (RFC 5322 §3.4).
 *
 * @param displayName decoded display name, as written
 * @param address the addr-spec, as written
 */
public record Mailbox(Optional<String> displayName, String address) {

    /** The address in lower case: how two addresses are compared here (RFC 5321 lets local parts differ by case; no provider does). */
    public String key() {
        return address.toLowerCase(Locale.ROOT);
    }
}
