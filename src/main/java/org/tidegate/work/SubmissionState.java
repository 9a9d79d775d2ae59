package org.tidegate.work;

import java.util.Locale;

/** Where a submission stands (DESIGN 10). */
public enum SubmissionState {
    /** Kept, in no queue: the machine found that it is not a submission. */
    ASIDE,
    /** In the triage queue: something does not add up. */
    HELD,
    /** Everything adds up; a reader has to read the cassette. */
    TO_READ,
    /** The participant was asked for something. */
    WAITING,
    /** A reading is recorded; the letter is not out. */
    READ,
    /** The letter is out, or a person closed it without one. */
    CLOSED,
    /** A revised letter is out that names the original. */
    AMENDED,
    /** The certificate is revoked. */
    WITHDRAWN;

    /** The stable form in JSON, the store and the ledger. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** @throws IllegalArgumentException for anything but a {@link #code} */
    public static SubmissionState ofCode(String code) {
        return valueOf(code.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** Whether a later message for the same test joins it (DESIGN 9). */
    public boolean takesMore() {
        return this == HELD || this == WAITING;
    }

    /** Whether the next step is one of our own people's. */
    public boolean waitsForAPerson() {
        return this == HELD || this == TO_READ || this == READ;
    }

    /** Whether only assessments have moved it so far, so that a new assessment may move it again. */
    public boolean movedByAssessment() {
        return this == ASIDE || this == HELD || this == TO_READ;
    }
}
