package org.tidegate.work;

import java.util.Locale;

/** What goes out by mail. */
public enum LetterKind {
    ACKNOWLEDGEMENT,
    /** Something is missing or wrong. */
    REQUEST,
    REMINDER,
    /** What was asked for did not come in time. */
    EXPIRED,
    VOIDED,
    REPEAT,
    /** Which one stands in the letter alone, sealed. */
    RESULT,
    /** A revised result letter that names the original. */
    AMENDED,
    /** A result was taken back. */
    WITHDRAWN,
    /** An honest new time for the answer. */
    NEW_TIME,
    /** How the times were judged, for someone who doubts it. */
    TIMES,
    /** To the on-call person. */
    ON_CALL,
    /** To our own team. */
    HANDOVER;

    /** The stable form: {@code new-time}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Private: goes to the booked address only, and out only after a trained reader released it. */
    public boolean result() {
        return this == RESULT || this == AMENDED || this == WITHDRAWN;
    }

    /** To ourselves, not to a participant. */
    public boolean internal() {
        return this == ON_CALL || this == HANDOVER;
    }
}
