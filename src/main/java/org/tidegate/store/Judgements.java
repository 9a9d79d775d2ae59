package org.tidegate.store;

import java.sql.SQLException;
import java.util.List;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.work.Judgement;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.UserId;

/** People's decisions, only ever appended. */
public final class Judgements {

    private final Tx tx;

    Judgements(Tx tx) {
        this.tx = tx;
    }

    public void append(Judgement j) {
        tx.update(
                "INSERT INTO judgements (submission, assessment, discrepancy, decision, reason_code, who, made)"
                        + " VALUES (?, ?, ?, ?, ?, ?, ?)",
                j.submission().value(),
                j.assessment(),
                j.discrepancy().code(),
                j.decision().name(),
                j.reasonCode(),
                j.who().value(),
                j.when());
    }

    public List<Judgement> of(SubmissionId id) {
        return tx.list(
                "SELECT submission, assessment, discrepancy, decision, reason_code, who, made FROM judgements"
                        + " WHERE submission = ? ORDER BY id",
                Judgements::read,
                id.value());
    }

    private static Judgement read(Row r) throws SQLException {
        return new Judgement(
                new SubmissionId(r.number("submission")),
                r.small("assessment"),
                DiscrepancyCode.ofCode(r.text("discrepancy")).orElseThrow(),
                Judgement.Decision.valueOf(r.text("decision")),
                r.text("reason_code"),
                new UserId(r.text("who")),
                r.instant("made"));
    }
}
