package org.tidegate.casework;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.Assessment;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.Findings;
import org.tidegate.work.Claim;
import org.tidegate.work.Ending;
import org.tidegate.work.Judgement;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.Submission;
import org.tidegate.work.SuggestedReply;

/**
 * One submission as a person sees it.
 *
 * @param messages its messages in order of taking
 * @param history every assessment it had, the newest first
 * @param open what still holds it: its holds less those that a person accepted
 * @param judgements in the order in which they were made
 * @param claim who has taken it up at this moment
 * @param letters what was written to the participant
 * @param endings how it came to be closed
 * @param waitsUntil until when it waits for the participant
 * @param kin other submissions among which a message of this one is split
 * @param crops its cassettes by themselves, also those whose photo is forgotten
 */
public record SubmissionView(
        Submission submission,
        List<TakenMessage> messages,
        Assessment assessment,
        Optional<TestRecord> test,
        Optional<SuggestedReply> reply,
        List<Past> history,
        List<Discrepancy> open,
        List<Judgement> judgements,
        Optional<Claim> claim,
        List<OutboxLetter> letters,
        List<Ending> endings,
        Optional<Instant> waitsUntil,
        List<Submission> kin,
        List<KeptCrop> crops) {

    /** Whether the suggested reply was given since the submission was assessed last. */
    public boolean answered() {
        return history.stream()
                .findFirst()
                .filter(p -> Answered.since(p.when(), letters))
                .isPresent();
    }

    /** One message with what it showed. */
    public record TakenMessage(long number, Instant taken, Findings findings) {}

    /** An earlier assessment. */
    public record Past(int number, Instant when, String disposition, List<String> holds) {}
}
