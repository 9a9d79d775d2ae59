package org.tidegate.message;

/**
 * Something malformed or out of bounds that reading went on in spite of.
 *
 * @param kind what sort of problem
 * @param place where in the message: a header name or a part path such as {@code 2.1}
 * @param words plain English for the operator
 */
public record Problem(Kind kind, String place, String words) {

    public enum Kind {
        /** Breaks the grammar of its standard, but what could be read was read. */
        MALFORMED,
        /** Over one of the {@link Limits}; what lies beyond was not looked at. */
        OVER_LIMIT,
        /** A program, script or macro. */
        ACTIVE_CONTENT,
        /** Encrypted, so nobody here can look inside. */
        ENCRYPTED
    }
}
