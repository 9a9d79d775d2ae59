package org.tidegate.work;

import java.time.Instant;
import java.util.Locale;

/**
 * How a submission came to be closed.
 *
 * @param reasonCode one of the codes that the rules list, or {@code none}
 */
public record Ending(SubmissionId submission, Kind kind, String reasonCode, UserId who, Instant when) {

    public enum Kind {
        /** The result letter is released. */
        RELEASED,
        /** A new attempt on a second kit. */
        REPEAT,
        /** The test does not count, for reasons of procedure. */
        VOID,
        /** A person found that it needs no reading and no letter. */
        SET_ASIDE,
        /** The participant was answered; nothing more is to be done. */
        ANSWERED,
        /** What was asked for did not come in time. */
        EXPIRED,
        /** A revised letter replaced the first. */
        AMENDED,
        /** The result letter was taken back. */
        WITHDRAWN,
        /** Its messages were forgotten. */
        FORGOTTEN;

        /** The stable form: {@code set-aside}. */
        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
