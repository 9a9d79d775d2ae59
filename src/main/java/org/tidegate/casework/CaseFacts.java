package org.tidegate.casework;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.booking.TestRecord;
import org.tidegate.finding.Discrepancy;

/**
 * What the queue says of a submission whatever the time is.
 *
 * @param version of the submission at which this was so
 * @param holds what still holds it
 */
record CaseFacts(
        int version,
        String who,
        List<String> addresses,
        Optional<TestRecord> test,
        List<Discrepancy> holds,
        Instant since,
        Optional<String> suggestion) {}
