package org.tidegate.message;

/** What kind of sender a message shows itself to have (RFC 3834, RFC 3464, RFC 2919, RFC 2369). */
public enum Nature {
    /** Nothing says that it was not written by a person. */
    PERSONAL,
    /** An automatic reply such as an absence note: {@code Auto-Submitted}, {@code Precedence: auto_reply}. */
    AUTOMATIC_REPLY,
    /** A delivery report: {@code multipart/report}, null return path, or a postmaster's notice. */
    BOUNCE,
    /** Sent through a mailing list or in bulk: {@code List-Id}, {@code List-Unsubscribe}, {@code Precedence: bulk}. */
    LIST
}
