package org.tidegate.casework;

import java.util.List;
import java.util.Optional;
import org.tidegate.examination.Assessment;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.Severity;
import org.tidegate.store.StoredJson;
import org.tidegate.store.Tx;
import org.tidegate.work.Judgement;
import org.tidegate.work.SubmissionId;

/**
 * What still holds a submission: its discrepancies less those that a person has accepted. An acceptance counts for what the
 * person saw; where the figures have changed since, it has to be judged again.
 */
final class OpenHolds {

    private OpenHolds() {}

    static List<Discrepancy> of(Tx tx, SubmissionId id, Assessment assessment) {
        List<Judgement> accepted = tx.judgements().of(id).stream()
                .filter(j -> j.decision() == Judgement.Decision.ACCEPT)
                .toList();
        return assessment.discrepancies().stream()
                .filter(d -> d.severity() == Severity.HOLD)
                .filter(d -> accepted.stream().noneMatch(j -> covers(tx, j, d)))
                .toList();
    }

    private static boolean covers(Tx tx, Judgement judgement, Discrepancy d) {
        return judgement.discrepancy() == d.code()
                && seen(tx, judgement)
                        .filter(s -> s.reason().equals(d.reason()))
                        .isPresent();
    }

    private static Optional<Discrepancy> seen(Tx tx, Judgement j) {
        return tx
                .assessments()
                .find(j.submission(), j.assessment())
                .map(a -> StoredJson.read(a.content(), Assessment.class))
                .stream()
                .flatMap(a -> a.discrepancies().stream())
                .filter(d -> d.code() == j.discrepancy())
                .findFirst();
    }
}
