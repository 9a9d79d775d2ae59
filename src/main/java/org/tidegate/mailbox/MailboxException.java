package org.tidegate.mailbox;

/** A mailbox cannot be worked with until a person does something; the message says what. */
public final class MailboxException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public MailboxException(String message, Throwable cause) {
        super(message, cause);
    }

    public MailboxException(String message) {
        super(message);
    }
}
