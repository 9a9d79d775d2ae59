package org.tidegate.message;

import java.util.Optional;

/**
 * One method result of an {@code Authentication-Results} field (RFC 8601 §2.2).
 *
 * @param position index of the field among all header fields, 0 on top, so that trust can be decided by place
 * @param hopsAbove how many {@code Received} lines stand above the field
 * @param authservId the identity that vouches for it
 * @param method {@code dkim}, {@code spf}, {@code dmarc}, …
 * @param result {@code pass}, {@code fail}, {@code none}, {@code temperror}, …
 * @param domain the domain that the result speaks of, where given
 */
public record AuthenticationResult(
        int position, int hopsAbove, String authservId, String method, String result, Optional<String> domain) {}
