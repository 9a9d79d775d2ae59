package org.tidegate.examination;

import java.util.List;
import java.util.Optional;
import org.tidegate.booking.TestKey;
import org.tidegate.examination.checks.Standing;
import org.tidegate.examination.timing.Outage;
import org.tidegate.finding.Findings;

/**
 * All inputs of one assessment beside the rules.
 *
 * @param messages findings of the submission's messages in order of taking, at least one
 * @param tests the tests of the book
 * @param outages times in which our own mail was down
 * @param linked the test that a person said it is for; it stands over what the messages state
 */
public record AssessmentInput(
        List<Findings> messages, OpenTests tests, Standing standing, List<Outage> outages, Optional<TestKey> linked) {

    public AssessmentInput {
        messages = List.copyOf(messages);
        outages = List.copyOf(outages);
    }
}
