package org.tidegate.casework;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.examination.Assessment;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.finding.Severity;
import org.tidegate.store.Tx;
import org.tidegate.work.Lane;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionState;

/** What waits for a person, in the order in which it should be taken up (DESIGN 10). */
final class TriageQueue {

    /** Urgent words first; then by lane; in it by what presses, and then age. */
    static final Comparator<Entry> ORDER = Comparator.comparing(
                    (Entry e) -> !e.submission().urgent())
            .thenComparing(Entry::lane)
            .thenComparing(Entry::pressing)
            .thenComparing(e -> e.submission().arrived())
            .thenComparing(e -> e.submission().id());

    private final CaseReader reader;

    TriageQueue(CaseReader reader) {
        this.reader = reader;
    }

    /** A submission in its lane. */
    record Entry(Submission submission, Assessment assessment, Lane lane) {

        static Entry of(Submission submission, Assessment assessment, Instant now) {
            return new Entry(submission, assessment, TriageQueue.lane(submission, assessment.discrepancies(), now));
        }

        /** Overdue ones by embarkation, all others by due. */
        Instant pressing() {
            return lane == Lane.OVERDUE ? submission.neededBy().orElse(Instant.MAX) : submission.due();
        }
    }

    /** @param now decides what can still be saved and what is overdue */
    List<QueueRow> rows(Tx tx, Instant now) {
        return Stream.of(SubmissionState.HELD, SubmissionState.TO_READ)
                .flatMap(state -> tx.submissions().inState(state).stream())
                .flatMap(s -> reader.assessment(tx, s).map(a -> Entry.of(s, a, now)).stream())
                .sorted(ORDER)
                .map(e -> row(tx, e))
                .toList();
    }

    private QueueRow row(Tx tx, Entry e) {
        Submission s = e.submission();
        return new QueueRow(
                s.id(),
                s.state(),
                e.lane(),
                s.urgent(),
                reader.who(tx, s, e.assessment()),
                reader.test(tx, e.assessment()).map(CaseReader::inWords),
                e.assessment().discrepancies().stream()
                        .filter(d -> d.severity() == Severity.HOLD)
                        .toList(),
                s.arrived(),
                s.due(),
                s.savable(),
                suggestion(tx, s));
    }

    private static Optional<String> suggestion(Tx tx, Submission s) {
        return tx.replies()
                .suggested(s.id(), s.assessment())
                .map(r -> r.notAfter().isPresent() ? "ask" : "explain");
    }

    static Lane lane(Submission s, List<Discrepancy> all, Instant now) {
        if (all.stream().anyMatch(d -> d.code() == DiscrepancyCode.CORRESPONDENCE && d.severity() == Severity.HOLD)) {
            return Lane.CORRESPONDENCE;
        }
        if (s.savable().filter(now::isBefore).isPresent()) {
            return Lane.SAVABLE;
        }
        return s.due().isBefore(now) ? Lane.OVERDUE : Lane.REST;
    }
}
