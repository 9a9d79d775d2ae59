package org.tidegate.mailbox;

/** How one try to send ended. */
public sealed interface SendResult {

    /** The server took responsibility (RFC 5321 §4.2.5). */
    record Accepted() implements SendResult {}

    /**
     * The message was not sent, for certain.
     *
     * @param permanent whether trying again without a change is pointless (RFC 5321 §4.2.1, 5yz)
     * @param words what the server or network said, for the operator
     */
    record Refused(boolean permanent, String words) implements SendResult {}

    /** The connection broke after the message may have been handed over: it may or may not have been sent. */
    record Uncertain(String words) implements SendResult {}
}
