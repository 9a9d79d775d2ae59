package org.tidegate.casework;

import java.util.Optional;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.Assessment;
import org.tidegate.finding.Findings;
import org.tidegate.work.SubmissionId;

/**
 * What a letter is about.
 *
 * @param number of the assessment
 * @param first what the first message showed
 */
record Matter(
        SubmissionId submission,
        int number,
        Findings first,
        Assessment assessment,
        Optional<TestRecord> test,
        Deadlines deadlines) {

    /** The booked language; empty text where none is known. */
    String language() {
        return test.flatMap(t -> t.appointment().language()).orElse("");
    }

    Optional<String> bookedAddress() {
        return test.flatMap(t -> t.appointment().email());
    }
}
