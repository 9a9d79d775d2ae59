package org.tidegate.casework;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.rules.RoleRules.Permission;
import org.tidegate.store.Store;
import org.tidegate.store.Tx;
import org.tidegate.work.Claim;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.User;

/** Taking up and putting back: a claim keeps two people from answering one person, and lapses by itself. */
public final class Claiming {

    private final Store store;
    private final Acting acting;

    Claiming(Store store, Acting acting) {
        this.store = store;
        this.acting = acting;
    }

    /** Takes a submission up, or prolongs the own claim; {@link ActionResult.Taken} where another holds it. */
    public ActionResult claim(User who, SubmissionId id) {
        return changed(who, id, tx -> {
            Optional<Claim> held = tx.claims().of(id, acting.now());
            if (held.filter(c -> !c.who().equals(who.id())).isPresent()) {
                return held;
            }
            Instant until = acting.now().plus(acting.rules().service().claimLapse());
            tx.claims().put(new Claim(id, who.id(), until));
            if (held.isEmpty()) {
                tx.record("claimed", who.id(), List.of(), Map.of("submission", id.toString()));
            }
            return Optional.empty();
        });
    }

    /** Puts back what the user has taken up. */
    public ActionResult release(User who, SubmissionId id) {
        return changed(who, id, tx -> {
            Optional<Claim> held = tx.claims().of(id, acting.now());
            if (held.filter(c -> !c.who().equals(who.id())).isPresent()) {
                return held;
            }
            if (held.isPresent()) {
                tx.claims().drop(id);
                tx.record("claim-released", who.id(), List.of(), Map.of("submission", id.toString()));
            }
            return Optional.empty();
        });
    }

    /** All claims that hold now. */
    public List<Claim> all() {
        return store.read(tx -> tx.claims().all(acting.now()));
    }

    private interface Change {
        /** @return the claim that stands in the way */
        Optional<Claim> make(Tx tx);
    }

    private ActionResult changed(User who, SubmissionId id, Change change) {
        if (!acting.rights().may(who, Permission.TRIAGE)) {
            return Acting.forbidden(who, Permission.TRIAGE);
        }
        return store.<ActionResult>write(tx -> {
            Optional<Submission> found = tx.submissions().find(id);
            if (found.isEmpty()) {
                return new ActionResult.Missing(id);
            }
            return change.make(tx)
                    .<ActionResult>map(ActionResult.Taken::new)
                    .orElseGet(() -> new ActionResult.Done(found.get(), Optional.empty(), id + " is yours."));
        });
    }
}
