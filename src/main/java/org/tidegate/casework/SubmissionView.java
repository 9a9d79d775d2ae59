package org.tidegate.casework;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.Assessment;
import org.tidegate.finding.Findings;
import org.tidegate.work.Submission;
import org.tidegate.work.SuggestedReply;

/**
 * One submission as a person sees it.
 *
 * @param messages its messages in order of taking
 * @param history every assessment it had, the newest first
 */
public record SubmissionView(
        Submission submission,
        List<TakenMessage> messages,
        Assessment assessment,
        Optional<TestRecord> test,
        Optional<SuggestedReply> reply,
        List<Past> history) {

    /** One message with what it showed. */
    public record TakenMessage(long number, Instant taken, Findings findings) {}

    /** An earlier assessment. */
    public record Past(int number, Instant when, String disposition, List<String> holds) {}
}
