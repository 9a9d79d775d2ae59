package org.tidegate.work;

import java.time.Instant;

/**
 * Someone has taken a submission up, so that two do not answer it.
 *
 * @param until when it is free again (rule {@code claim_lapse})
 */
public record Claim(SubmissionId submission, UserId who, Instant until) {}
