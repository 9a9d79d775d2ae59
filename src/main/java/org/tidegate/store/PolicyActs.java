package org.tidegate.store;

import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.tidegate.work.PolicyAct;
import org.tidegate.work.SubmissionId;

/** What the policy of unattended answers did, an entry an assessment. */
public final class PolicyActs {

    private static final String ALL = "SELECT submission, assessment, act, codes, letter, rules, made FROM policy_acts";

    private final Tx tx;

    PolicyActs(Tx tx) {
        this.tx = tx;
    }

    /** Submissions that wait for a person and whose present assessment has not been considered, what is due first. */
    public List<SubmissionId> toConsider(int most) {
        return tx.list(
                "SELECT s.id AS id FROM submissions s LEFT JOIN policy_acts p ON p.submission = s.id"
                        + " AND p.assessment = s.assessment WHERE s.state IN ('held', 'to-read') AND p.submission IS NULL"
                        + " ORDER BY s.due, s.id LIMIT ?",
                r -> new SubmissionId(r.number("id")),
                most);
    }

    public void add(PolicyAct act) {
        tx.update(
                "INSERT INTO policy_acts (submission, assessment, act, codes, letter, rules, made)"
                        + " VALUES (?, ?, ?, ?, ?, ?, ?)",
                act.submission().value(),
                act.assessment(),
                act.act().name(),
                String.join(",", act.codes()),
                act.letter(),
                act.rules(),
                act.when());
    }

    public Optional<PolicyAct> find(SubmissionId id, int assessment) {
        return tx.first(ALL + " WHERE submission = ? AND assessment = ?", PolicyActs::read, id.value(), assessment);
    }

    public Optional<PolicyAct> ofLetter(long letter) {
        return tx.first(ALL + " WHERE letter = ?", PolicyActs::read, letter);
    }

    /** In the order of the assessments. */
    public List<PolicyAct> of(SubmissionId id) {
        return tx.list(ALL + " WHERE submission = ? ORDER BY assessment", PolicyActs::read, id.value());
    }

    /** Done in {@code from … until}, the second exclusive. */
    public List<PolicyAct> made(Instant from, Instant until) {
        return tx.list(
                ALL + " WHERE made >= ? AND made < ? ORDER BY made, submission, assessment",
                PolicyActs::read,
                from,
                until);
    }

    private static PolicyAct read(Row r) throws SQLException {
        return new PolicyAct(
                new SubmissionId(r.number("submission")),
                r.small("assessment"),
                PolicyAct.Act.valueOf(r.text("act")),
                Arrays.stream(r.text("codes").split(","))
                        .filter(c -> !c.isEmpty())
                        .toList(),
                r.maybeNumber("letter"),
                r.text("rules"),
                r.instant("made"));
    }
}
