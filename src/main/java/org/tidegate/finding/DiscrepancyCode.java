package org.tidegate.finding;

import java.util.Locale;
import java.util.Optional;

/** Every discrepancy there is (DESIGN 9). The codes are stable: ledgers and rules name them for years. */
public enum DiscrepancyCode {
    NOT_A_SUBMISSION,
    CORRESPONDENCE,
    URGENT_WORDS,
    SUBJECT_UNREADABLE,
    NO_APPOINTMENT,
    APPOINTMENT_UNCLEAR,
    ALREADY_SUBMITTED,
    SENDER_UNKNOWN,
    SENDER_NOT_AUTHENTICATED,
    CLINIC_DIFFERS,
    NOT_OBSERVED,
    SEVERAL_CASSETTES,
    NO_PHOTO,
    NO_CASSETTE,
    PHOTO_UNREADABLE,
    NO_ID,
    ID_SEPARATE,
    ID_DIFFERS,
    NO_CAPTURE_TIME,
    PHOTO_REUSED,
    PHOTO_EDITED,
    PHOTO_BEFORE_TEST,
    READ_EARLY,
    READ_LATE,
    LATE,
    LATE_IN_TRANSIT,
    OUR_OUTAGE,
    TIME_UNDETERMINED,
    CLOCKS_CONFLICT,
    STATED_TIME_DIFFERS,
    KIT_UNKNOWN,
    LOT_EXPIRED,
    LOT_QUARANTINED,
    LOT_DIFFERS,
    MARK_DIFFERS,
    CASSETTE_UNMARKED,
    ATTACHMENT_UNSAFE,
    FORMAT_UNSUPPORTED;

    /** The stable form: {@code read-early}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<DiscrepancyCode> ofCode(String code) {
        for (DiscrepancyCode c : values()) {
            if (c.code().equals(code)) {
                return Optional.of(c);
            }
        }
        return Optional.empty();
    }
}
