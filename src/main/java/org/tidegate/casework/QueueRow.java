package org.tidegate.casework;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.booking.TestRecord;
import org.tidegate.finding.Discrepancy;
import org.tidegate.work.Lane;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.UserId;

/**
 * One line of the queue.
 *
 * @param who the booked name where the match is sure, else as stated, else the sender
 * @param addresses booked and written from, lower case
 * @param test the matched test; empty where none was found for sure
 * @param holds what still does not add up, the reason first that stands first in the rules
 * @param since when it came to stand as it does: later than a page means news to that page
 * @param suggestion what the suggested reply does, in a word: {@code ask} or {@code explain}; empty where no letter is due
 * @param claimedBy who has taken it up at this moment
 */
public record QueueRow(
        SubmissionId id,
        SubmissionState state,
        Lane lane,
        boolean urgent,
        String who,
        List<String> addresses,
        Optional<TestRecord> test,
        List<Discrepancy> holds,
        Instant arrived,
        Instant since,
        Instant due,
        Optional<Instant> savable,
        Optional<String> suggestion,
        Optional<UserId> claimedBy) {}
