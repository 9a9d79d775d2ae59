package org.tidegate.casework;

import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.tidegate.rules.RoleRules.Permission;
import org.tidegate.store.QuarantinedLot;
import org.tidegate.store.Store;
import org.tidegate.store.Tx;
import org.tidegate.work.Outage;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.User;
import org.tidegate.work.WorkItem;

/** Lots that must not be used, and times in which our own mail was down; what is open is assessed anew after each change. */
public final class Registering {

    private static final Set<SubmissionState> OPEN =
            EnumSet.of(SubmissionState.HELD, SubmissionState.TO_READ, SubmissionState.WAITING, SubmissionState.READ);

    private final Store store;
    private final Acting acting;

    Registering(Store store, Acting acting) {
        this.store = store;
        this.acting = acting;
    }

    /** What became of an entry. */
    public sealed interface Entry {
        /** @param assessedAgain how many open submissions will be assessed anew */
        record Made(int assessedAgain) implements Entry {}

        record Forbidden(String words) implements Entry {}

        record Refused(String words) implements Entry {}
    }

    public List<QuarantinedLot> quarantined() {
        return store.read(tx -> tx.registers().quarantine());
    }

    public List<Outage> outages() {
        return store.read(tx -> tx.registers().outages());
    }

    /** Sets a lot aside from now on; who may read may do it. */
    public Entry quarantine(User who, String lot, String reason) {
        if (lot.isBlank()) {
            return new Entry.Refused("Which lot?");
        }
        return change(
                who,
                "lot-quarantined",
                Map.of("lot", lot.strip()),
                tx -> tx.registers().quarantine(new QuarantinedLot(lot.strip(), acting.now(), reason, who.id())));
    }

    public Entry lift(User who, String lot) {
        return change(
                who,
                "lot-quarantine-lifted",
                Map.of("lot", lot),
                tx -> tx.registers().lift(lot));
    }

    /**
     * Enters a time in which our own mail was down.
     *
     * @param from inclusive
     * @param until exclusive, not after now
     */
    public Entry outage(User who, Instant from, Instant until, String reason) {
        if (!from.isBefore(until) || until.isAfter(acting.now())) {
            return new Entry.Refused("An outage begins before it ends, and it is over.");
        }
        return change(
                who,
                "outage-entered",
                Map.of("from", from.toString(), "until", until.toString()),
                tx -> tx.registers().add(new Outage(from, until, reason)));
    }

    private Entry change(User who, String event, Map<String, String> references, Consumer<Tx> body) {
        if (!acting.rights().may(who, Permission.READ)) {
            return new Entry.Forbidden(Acting.forbidden(who, Permission.READ).words());
        }
        return acting.inTurn(tx -> {
            body.accept(tx);
            tx.record(event, who.id(), List.of(), references);
            return new Entry.Made(assessOpenAgain(tx));
        });
    }

    static int assessOpenAgain(Tx tx) {
        return assessAgain(tx, s -> true);
    }

    /** @return how many open submissions of these will be assessed anew */
    static int assessAgain(Tx tx, Predicate<Submission> which) {
        List<Submission> open =
                tx.submissions().inStates(OPEN).stream().filter(which).toList();
        open.forEach(s -> s.messages().forEach(m -> tx.work().add(WorkItem.Kind.ASSESS, m.value(), s.due())));
        return open.size();
    }
}
