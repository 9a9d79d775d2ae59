package org.tidegate.mailbox;

/** What sends a message, once. */
public interface Outgoing {

    /** Tries to send, a single time. Never throws for what a server or network does. */
    SendResult send(OutgoingMail mail);
}
