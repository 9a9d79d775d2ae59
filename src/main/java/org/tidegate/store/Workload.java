package org.tidegate.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.UserId;

/** What came in when, and which person finished what when. */
public final class Workload {

    private static final String ACTS = "SELECT submission, who, made FROM outbox WHERE kind <> 'NEW_TIME' UNION ALL"
            + " SELECT submission, who, made FROM judgements UNION ALL"
            + " SELECT submission, who, made FROM readings UNION ALL"
            + " SELECT submission, who, made FROM endings";

    private final Tx tx;

    Workload(Tx tx) {
        this.tx = tx;
    }

    /** A person did something to a submission that arrived then. */
    public record Act(UserId who, SubmissionId submission, Instant arrived, Instant when) {}

    /** When each submission of {@code from … until} arrived, the second exclusive. */
    public List<Instant> arrivals(Instant from, Instant until) {
        return tx.list(
                "SELECT arrived FROM submissions WHERE arrived >= ? AND arrived < ? AND state <> ? ORDER BY arrived",
                r -> r.instant("arrived"),
                from,
                until,
                SubmissionState.ASIDE.code());
    }

    /** Where the store's history begins. */
    public Optional<Instant> firstArrival() {
        return tx.first("SELECT arrived FROM submissions ORDER BY arrived LIMIT 1", r -> r.instant("arrived"));
    }

    /** What people did since then, person by person in the order of time. */
    public List<Act> acts(Instant since) {
        return tx.list(
                "SELECT a.who AS who, a.submission AS submission, s.arrived AS arrived, a.made AS made FROM (" + ACTS
                        + ") a JOIN submissions s ON s.id = a.submission WHERE a.made >= ? AND a.who NOT IN (?, ?)"
                        + " ORDER BY a.who, a.made, a.submission",
                r -> new Act(
                        new UserId(r.text("who")),
                        new SubmissionId(r.number("submission")),
                        r.instant("arrived"),
                        r.instant("made")),
                since,
                UserId.DAEMON.value(),
                UserId.POLICY.value());
    }
}
