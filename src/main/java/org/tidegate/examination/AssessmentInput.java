package org.tidegate.examination;

import java.util.List;
import org.tidegate.examination.checks.Standing;
import org.tidegate.examination.timing.Outage;
import org.tidegate.finding.Findings;

/**
 * All inputs of one assessment beside the rules.
 *
 * @param messages findings of the submission's messages in order of taking, at least one
 * @param tests the tests of the book
 * @param outages times in which our own mail was down
 */
public record AssessmentInput(List<Findings> messages, OpenTests tests, Standing standing, List<Outage> outages) {

    public AssessmentInput {
        messages = List.copyOf(messages);
        outages = List.copyOf(outages);
    }
}
