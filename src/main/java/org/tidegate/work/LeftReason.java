package org.tidegate.work;

import java.util.Locale;

/** Why the policy of unattended answers did not ask, or did not write at all. */
public enum LeftReason {
    /** A discrepancy that the rules leave to people from the first word. */
    NEEDS_A_PERSON,
    /** A discrepancy that is judged, not measured. */
    JUDGED,
    /** What would be asked for would come too late. */
    TOO_LATE,
    /** More than a covering note was written. */
    FREE_TEXT,
    /** Our own host did not find {@code dmarc=pass} on every message. */
    NOT_AUTHENTICATED,
    /** No booked address is known. */
    NO_ADDRESS,
    /** Automatic, bulk, list or bounce mail, or our own address. */
    NOT_A_PERSON,
    /** As many letters as the rules allow went to this address within a day. */
    TOO_MANY,
    /** It was written to before. */
    ANSWERED_BEFORE,
    /** The promise of the acknowledgement has passed already. */
    PROMISE_PASSED,
    /** A text cannot be filled without a hole. */
    NO_TEXT,
    /** The rules turn it off. */
    TURNED_OFF;

    /** The stable form: {@code free-text}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
