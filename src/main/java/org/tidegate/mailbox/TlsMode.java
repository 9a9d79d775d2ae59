package org.tidegate.mailbox;

/** How a connection is protected. */
public enum TlsMode {
    /** TLS from the first byte (RFC 8314 §3). */
    IMPLICIT,
    /** STARTTLS, required (RFC 3501 §6.2.1, RFC 3207). */
    STARTTLS,
    /** No protection: allowed to loopback only. */
    PLAIN
}
