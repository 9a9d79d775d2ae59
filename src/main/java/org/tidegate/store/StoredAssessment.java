package org.tidegate.store;

import java.time.Instant;
import java.util.List;
import org.tidegate.work.MessageId;
import org.tidegate.work.SubmissionId;

/**
 * One assessment of a submission; later ones never overwrite it.
 *
 * @param number from 1, within the submission
 * @param rules content hash of the rules
 * @param messages what was assessed, in the order of taking
 * @param outcome {@code match}, {@code ambiguous} or {@code none}
 * @param codes discrepancies as {@code severity:code}, in order
 * @param content the whole assessment as JSON
 */
public record StoredAssessment(
        SubmissionId submission,
        int number,
        Instant made,
        String rules,
        List<MessageId> messages,
        String outcome,
        List<String> codes,
        String content) {}
