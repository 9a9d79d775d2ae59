package org.tidegate.work;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What the policy of unattended answers did about one assessment of a submission; each assessment is considered once.
 *
 * @param codes what it asked for, what held the submission, or why it left it to a person; codes only, nothing personal
 * @param letter number in the outbox; empty where nothing was written
 * @param rules hash of the rules that it acted under
 */
public record PolicyAct(
        SubmissionId submission,
        int assessment,
        Act act,
        List<String> codes,
        Optional<Long> letter,
        String rules,
        Instant when) {

    public PolicyAct {
        codes = List.copyOf(codes);
    }

    public enum Act {
        /** The participant was asked for what is missing. */
        ASKED,
        /** The participant knows that the message is here. */
        ACKNOWLEDGED,
        /** Nothing was written: a person answers. */
        LEFT;

        /** The stable form. */
        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
