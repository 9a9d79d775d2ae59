package org.tidegate.casework;

import java.util.List;
import java.util.Optional;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.timing.TestWindows;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.SubmissionId;

/**
 * A test whose window is open or over, and of which nothing came.
 *
 * @param windows its clock times
 * @param perhaps open submissions without a sure test that may be this person's
 * @param reminder the letter that reminded of it
 */
public record SilentTest(
        TestRecord test, TestWindows windows, List<SubmissionId> perhaps, Optional<OutboxLetter> reminder, Step step) {

    public SilentTest {
        perhaps = List.copyOf(perhaps);
    }

    /** What to do about it. */
    public enum Step {
        /** There is time: send the reminder. */
        REMIND,
        /** A reminder is on its way or went. */
        REMINDED,
        /** Something came that may be it: look there first. */
        LOOK,
        /** When it began is not recorded, so that no clock times can be told: ask the observer. */
        OBSERVE,
        /** No mail can reach the person in time: call. */
        CALL,
        /** Nothing can be saved any more. */
        OVER,
        /** The observer's record says that nobody watched it. */
        NOT_OBSERVED
    }
}
