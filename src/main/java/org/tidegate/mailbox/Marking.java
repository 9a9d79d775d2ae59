package org.tidegate.mailbox;

/** How a taken message is marked on the server. Nothing is ever deleted. */
public sealed interface Marking {

    /** An IMAP keyword (RFC 3501 §2.3.2). */
    record Keyword(String keyword) implements Marking {}

    /** A move to another folder (RFC 6851). */
    record Move(String folder) implements Marking {}
}
