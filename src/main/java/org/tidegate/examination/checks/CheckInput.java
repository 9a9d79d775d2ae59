package org.tidegate.examination.checks;

import java.util.List;
import java.util.Optional;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.linkage.LinkageResult;
import org.tidegate.examination.timing.TimeJudgement;
import org.tidegate.finding.Findings;
import org.tidegate.rules.Rules;

/**
 * All that the checks look at.
 *
 * @param messages the submission's messages in order of taking
 * @param match the submission's match with the book
 * @param test the matched test; empty unless the match is sure
 * @param time verdicts on time; empty without a test or a known kit
 */
public record CheckInput(
        List<Findings> messages,
        LinkageResult match,
        Optional<TestRecord> test,
        Optional<TimeJudgement> time,
        Standing standing,
        Rules rules) {

    Findings last() {
        return messages.get(messages.size() - 1);
    }
}
