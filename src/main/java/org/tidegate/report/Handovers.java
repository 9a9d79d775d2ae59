package org.tidegate.report;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tidegate.casework.Casebook;
import org.tidegate.casework.QueueRow;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.report.Handover.Act;
import org.tidegate.report.Handover.Call;
import org.tidegate.report.Handover.Case;
import org.tidegate.report.Handover.Standing;
import org.tidegate.report.Handover.Troubled;
import org.tidegate.rules.Rules;
import org.tidegate.rules.ServiceHours;
import org.tidegate.store.Store;
import org.tidegate.store.Tx;
import org.tidegate.work.Lane;
import org.tidegate.work.LetterKind;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;
import org.tidegate.work.PolicyAct;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;

/** Computes handovers. */
public final class Handovers {

    private static final Duration LONGEST_NIGHT = Duration.ofDays(1);

    private final Store store;
    private final Casebook casebook;
    private final ServiceHours hours;

    public Handovers(Store store, Casebook casebook, Rules rules) {
        this.store = store;
        this.casebook = casebook;
        this.hours = ServiceHours.of(rules.hours());
    }

    /** From the end of the last shift until now; of the last day where somebody is always there. */
    public Handover lastNight(Instant now) {
        return of(hours.lastEnd(now).orElse(now.minus(LONGEST_NIGHT)), now);
    }

    /**
     * What came in and went out in {@code from … until}, the second exclusive, and how what arrived before its end stands at this
     * moment of the store.
     */
    public Handover of(Instant from, Instant until) {
        List<QueueRow> queue = casebook.queue(until);
        return store.read(tx -> new Handover(
                from,
                until,
                tx.messages().takenIn(from, until),
                tx.submissions().arrivedIn(SubmissionState.ASIDE, from, until),
                tx.work().waiting(),
                cases(tx, queue, until),
                acts(tx, from, until),
                calls(tx, from, until),
                troubled(tx, from, until)));
    }

    private static List<Case> cases(Tx tx, List<QueueRow> queue, Instant until) {
        List<Case> all = new ArrayList<>();
        queue.stream()
                .filter(r -> r.arrived().isBefore(until))
                .map(r -> queued(tx, r, until))
                .forEach(all::add);
        tx.submissions().inStates(EnumSet.of(SubmissionState.WAITING)).stream()
                .filter(s -> s.arrived().isBefore(until))
                .map(s -> waiting(tx, s))
                .forEach(all::add);
        all.sort(Comparator.comparing(Case::standing)
                .thenComparing(c -> c.until().orElse(c.due()))
                .thenComparing(Case::id));
        return all;
    }

    private static Case queued(Tx tx, QueueRow r, Instant now) {
        Standing standing = standing(r, now);
        boolean correctable = standing == Standing.SAVABLE || standing == Standing.LOST;
        return new Case(
                standing,
                r.id(),
                r.test().map(t -> t.key().toString()),
                r.test().map(t -> t.appointment().clinic()),
                r.holds().stream().map(d -> d.code().code()).toList(),
                r.arrived(),
                correctable ? r.savable() : Optional.empty(),
                r.due(),
                r.test().flatMap(t -> t.appointment().neededBy()).map(t -> t.toInstant()),
                lastAct(tx, r.id()));
    }

    private static Standing standing(QueueRow r, Instant now) {
        if (r.holds().stream().anyMatch(d -> d.code() == DiscrepancyCode.URGENT_WORDS)) {
            return Standing.URGENT;
        }
        if (r.state() == SubmissionState.TO_READ) {
            return Standing.TO_READ;
        }
        if (r.lane() == Lane.CORRESPONDENCE) {
            return Standing.TO_DECIDE;
        }
        return r.savable()
                .map(t -> now.isBefore(t) ? Standing.SAVABLE : Standing.LOST)
                .orElse(Standing.TO_DECIDE);
    }

    private static Case waiting(Tx tx, Submission s) {
        return new Case(
                Standing.WAITING,
                s.id(),
                s.test(),
                Optional.empty(),
                lastAct(tx, s.id()).map(PolicyAct::codes).orElse(List.of()),
                s.arrived(),
                tx.waits().until(s.id()),
                s.due(),
                s.neededBy(),
                lastAct(tx, s.id()));
    }

    private static Optional<PolicyAct> lastAct(Tx tx, SubmissionId id) {
        return tx.policyActs().of(id).stream().reduce((a, b) -> b);
    }

    private static List<Act> acts(Tx tx, Instant from, Instant until) {
        List<Act> acts = new ArrayList<>();
        for (PolicyAct act : tx.policyActs().made(from, until)) {
            act.letter()
                    .flatMap(l -> tx.outbox().find(l))
                    .map(l ->
                            new Act(act, tx.submissions().find(act.submission()).flatMap(Submission::test), l.state()))
                    .ifPresent(acts::add);
        }
        return acts;
    }

    private static List<Call> calls(Tx tx, Instant from, Instant until) {
        List<Call> calls = new ArrayList<>();
        for (OutboxLetter l : tx.outbox().made(from, until)) {
            if (l.kind() == LetterKind.ON_CALL) {
                l.submission().ifPresent(id -> calls.add(new Call(id, l.made(), l.reasonCode(), l.state())));
            }
        }
        return calls;
    }

    /** Uncertain ones whenever they were written: somebody has to find out. */
    private static List<Troubled> troubled(Tx tx, Instant from, Instant until) {
        Set<OutboxState> failed = EnumSet.of(OutboxState.REFUSED, OutboxState.TOO_LATE, OutboxState.NOT_ALLOWED);
        List<OutboxLetter> all = new ArrayList<>(tx.outbox().inState(OutboxState.UNCERTAIN));
        tx.outbox().made(from, until).stream()
                .filter(l -> failed.contains(l.state()))
                .forEach(all::add);
        return all.stream()
                .map(l -> new Troubled(l.id(), l.submission(), l.kind().code(), l.state()))
                .toList();
    }
}
