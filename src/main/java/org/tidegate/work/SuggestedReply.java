package org.tidegate.work;

import java.time.Instant;
import java.util.Optional;

/**
 * One letter that merges all discrepancies of a submission.
 *
 * @param to the booked address; empty where no test was found, so that a person decides
 * @param language BCP 47
 * @param notAfter when it must not be sent any more because what it asks for would come too late
 */
public record SuggestedReply(
        SubmissionId submission,
        int assessment,
        Optional<String> to,
        String language,
        String subject,
        String text,
        Optional<Instant> notAfter) {}
