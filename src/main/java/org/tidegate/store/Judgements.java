package org.tidegate.store;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.store.CaseKeys.Scope;
import org.tidegate.work.Judgement;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.UserId;

/** People's decisions, only ever appended. */
public final class Judgements {

    private static final String NOTE = "note of a judgement";

    private final Tx tx;

    Judgements(Tx tx) {
        this.tx = tx;
    }

    public void append(Judgement j) {
        tx.update(
                "INSERT INTO judgements (submission, assessment, discrepancy, decision, reason_code, who, made, sealed_note)"
                        + " VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                j.submission().value(),
                j.assessment(),
                j.discrepancy().code(),
                j.decision().name(),
                j.reasonCode(),
                j.who().value(),
                j.when(),
                j.note().map(n -> tx.caseKeys().seal(Scope.CASE, j.submission().value(), NOTE, n)));
    }

    public List<Judgement> of(SubmissionId id) {
        return tx.list(
                "SELECT submission, assessment, discrepancy, decision, reason_code, who, made, sealed_note FROM judgements"
                        + " WHERE submission = ? ORDER BY id",
                this::read,
                id.value());
    }

    private Judgement read(Row r) throws SQLException {
        return new Judgement(
                new SubmissionId(r.number("submission")),
                r.small("assessment"),
                DiscrepancyCode.ofCode(r.text("discrepancy")).orElseThrow(),
                Judgement.Decision.valueOf(r.text("decision")),
                r.text("reason_code"),
                new UserId(r.text("who")),
                r.instant("made"),
                note(r));
    }

    private Optional<String> note(Row r) throws SQLException {
        long submission = r.number("submission");
        return r.maybeBytes("sealed_note").flatMap(n -> tx.caseKeys().open(Scope.CASE, submission, NOTE, n));
    }
}
