package org.tidegate.work;

import java.time.Instant;
import java.util.Optional;
import org.tidegate.finding.DiscrepancyCode;

/**
 * A person's decision on one discrepancy of one assessment.
 *
 * @param assessment number of the assessment that the person saw
 * @param reasonCode one of the codes that the rules list
 * @param note in the person's own words
 */
public record Judgement(
        SubmissionId submission,
        int assessment,
        DiscrepancyCode discrepancy,
        Decision decision,
        String reasonCode,
        UserId who,
        Instant when,
        Optional<String> note) {

    public enum Decision {
        /** It does not stand in the way. */
        ACCEPT,
        /** The participant is asked. */
        ASK,
        /** A new attempt on a second kit. */
        REPEAT,
        /** The test does not count, for reasons of procedure. */
        VOID
    }
}
