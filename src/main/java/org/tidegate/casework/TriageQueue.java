package org.tidegate.casework;

import java.time.Instant;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.store.Tx;
import org.tidegate.work.Claim;
import org.tidegate.work.Lane;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;

/** What waits for a person, in the order in which it should be taken up (DESIGN 10). */
final class TriageQueue {

    private static final Set<SubmissionState> WAITING_FOR_A_PERSON =
            EnumSet.of(SubmissionState.HELD, SubmissionState.TO_READ);

    /** Urgent words first; then by lane; in it by what presses, and then age. */
    static final Comparator<Entry> ORDER = Comparator.comparing(
                    (Entry e) -> !e.submission().urgent())
            .thenComparing(Entry::lane)
            .thenComparing(Entry::pressing)
            .thenComparing(e -> e.submission().arrived())
            .thenComparing(e -> e.submission().id());

    private final KnownCases cases;

    TriageQueue(KnownCases cases) {
        this.cases = cases;
    }

    /** A submission in its lane. */
    record Entry(Submission submission, CaseFacts facts, Lane lane) {

        static Entry of(Submission submission, CaseFacts facts, Instant now) {
            return new Entry(submission, facts, TriageQueue.lane(submission, facts.holds(), now));
        }

        /** Overdue ones by embarkation, all others by due. */
        Instant pressing() {
            return lane == Lane.OVERDUE ? submission.neededBy().orElse(Instant.MAX) : submission.due();
        }
    }

    /** @param now decides what can still be saved and what is overdue */
    List<QueueRow> rows(Tx tx, Instant now) {
        List<Submission> waiting = tx.submissions().inStates(WAITING_FOR_A_PERSON);
        Map<SubmissionId, CaseFacts> facts = cases.of(tx, waiting);
        Map<SubmissionId, Claim> claims =
                tx.claims().all(now).stream().collect(Collectors.toMap(Claim::submission, c -> c));
        return waiting.stream()
                .flatMap(s -> Optional.ofNullable(facts.get(s.id())).map(f -> Entry.of(s, f, now)).stream())
                .sorted(ORDER)
                .map(e -> row(e, Optional.ofNullable(claims.get(e.submission().id()))))
                .toList();
    }

    private static QueueRow row(Entry e, Optional<Claim> claim) {
        Submission s = e.submission();
        CaseFacts f = e.facts();
        return new QueueRow(
                s.id(),
                s.state(),
                e.lane(),
                s.urgent(),
                f.who(),
                f.addresses(),
                f.test(),
                f.holds(),
                s.arrived(),
                f.since(),
                s.due(),
                s.savable(),
                f.suggestion(),
                claim.map(Claim::who));
    }

    static Lane lane(Submission s, List<Discrepancy> holds, Instant now) {
        if (holds.stream().anyMatch(d -> d.code() == DiscrepancyCode.CORRESPONDENCE)) {
            return Lane.CORRESPONDENCE;
        }
        if (s.savable().filter(now::isBefore).isPresent()) {
            return Lane.SAVABLE;
        }
        return s.due().isBefore(now) ? Lane.OVERDUE : Lane.REST;
    }
}
