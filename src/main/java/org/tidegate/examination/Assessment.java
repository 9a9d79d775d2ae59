package org.tidegate.examination;

import java.util.List;
import java.util.Optional;
import org.tidegate.booking.TestKey;
import org.tidegate.examination.linkage.LinkageResult;
import org.tidegate.examination.timing.TimeJudgement;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.Severity;
import org.tidegate.finding.WindowVerdict;

/**
 * How a submission stands.
 *
 * @param test the matched test; empty unless the match is sure
 * @param windows the time verdicts; empty without a match or a known kit
 * @param rulesHash the rules it was assessed under
 */
public record Assessment(
        LinkageResult match,
        Optional<TestKey> test,
        List<WindowVerdict> windows,
        Optional<TimeJudgement> time,
        List<Discrepancy> discrepancies,
        Disposition disposition,
        String rulesHash) {

    /** Where the submission goes. */
    public enum Disposition {
        /** Nothing in the way: a reader may read it. */
        TO_READ,
        /** Into the triage queue. */
        HELD,
        /** Kept, in no queue. */
        ASIDE
    }

    static Disposition disposition(List<Discrepancy> discrepancies) {
        if (discrepancies.stream().anyMatch(d -> d.severity() == Severity.HOLD)) {
            return Disposition.HELD;
        }
        boolean aside = discrepancies.stream().anyMatch(d -> d.severity() == Severity.ASIDE);
        return aside ? Disposition.ASIDE : Disposition.TO_READ;
    }
}
