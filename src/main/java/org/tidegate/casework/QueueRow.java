package org.tidegate.casework;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.Discrepancy;
import org.tidegate.work.Lane;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;

/**
 * One line of the queue.
 *
 * @param who the booked name where the match is sure, else as stated, else the sender
 * @param test the matched test with its clinic and slot in words; empty where none was found for sure
 * @param holds what does not add up, the reason first that stands first in the rules
 * @param suggestion what the suggested reply does, in a few words; empty where no letter is due
 */
public record QueueRow(
        SubmissionId id,
        SubmissionState state,
        Lane lane,
        boolean urgent,
        String who,
        Optional<String> test,
        List<Discrepancy> holds,
        Instant arrived,
        Instant due,
        Optional<Instant> savable,
        Optional<String> suggestion) {}
