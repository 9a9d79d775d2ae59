package org.tidegate.work;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What came in for one test.
 *
 * @param messages in the order of taking; never empty
 * @param test reference and attempt as {@code REF} or {@code REF#2}; empty where no test was found for sure
 * @param urgent words of distress or urgent symptoms were found
 * @param arrived when the first message arrived; when it was taken, where that is unknown
 * @param due when it is due (DESIGN 10)
 * @param savable until when a correction still counts; empty where nothing can be saved any more or nothing needs saving
 * @param neededBy embarkation
 * @param assessment number of the assessment that stands
 * @param version counts changes: a change against an old version is refused
 */
public record Submission(
        SubmissionId id,
        SubmissionState state,
        List<MessageId> messages,
        Optional<String> test,
        boolean urgent,
        Instant arrived,
        Instant due,
        Optional<Instant> savable,
        Optional<Instant> neededBy,
        int assessment,
        int version) {

    public Submission {
        messages = List.copyOf(messages);
    }

    /** The same one step on, in another state. */
    public Submission in(SubmissionState next) {
        return new Submission(
                id, next, messages, test, urgent, arrived, due, savable, neededBy, assessment, version + 1);
    }
}
