package org.tidegate.casework;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.rules.RoleRules.Permission;
import org.tidegate.store.Store;
import org.tidegate.store.Tx;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.User;

/** What is on its way out, what went, and what nobody can be sure of. */
public final class OutboxDesk {

    private final Store store;
    private final Acting acting;
    private final LetterDesk letters;

    OutboxDesk(Store store, Acting acting, LetterDesk letters) {
        this.store = store;
        this.acting = acting;
        this.letters = letters;
    }

    /** Letters about a submission, in the order in which they were written. */
    public List<OutboxLetter> of(SubmissionId id) {
        return store.read(tx -> tx.outbox().of(id));
    }

    public List<OutboxLetter> inState(OutboxState state) {
        return store.read(tx -> tx.outbox().inState(state));
    }

    /** Written in {@code from … until}, the second exclusive. */
    public List<OutboxLetter> written(Instant from, Instant until) {
        return store.read(tx -> tx.outbox().made(from, until));
    }

    public Optional<OutboxLetter> find(long letter) {
        return store.read(tx -> tx.outbox().find(letter));
    }

    /** Calls a letter back that has not begun to go out; its submission goes back to where it stood. */
    public ActionResult recall(User who, long letter) {
        return onLetter(who, letter, (tx, l) -> {
            Instant now = acting.now();
            if (l.state() != OutboxState.WAITING || !moved(tx, l, OutboxState.RECALLED, who, now)) {
                return new ActionResult.Refused("gone", "The letter cannot be called back any more.");
            }
            return done(tx, l, who, "Called back.");
        });
    }

    /**
     * A person found out what became of a letter of which nobody could be sure.
     *
     * @param went true: it did go; false: it did not, and its submission comes back to the queue
     */
    public ActionResult resolve(User who, long letter, boolean went) {
        return onLetter(who, letter, (tx, l) -> {
            OutboxState to = went ? OutboxState.SENT : OutboxState.REFUSED;
            if (l.state() != OutboxState.UNCERTAIN || !moved(tx, l, to, who, acting.now())) {
                return new ActionResult.Refused("certain", "There is nothing uncertain about this letter.");
            }
            return went ? found(tx, l, "It counts as sent.") : done(tx, l, who, "It counts as not sent.");
        });
    }

    private interface Step {
        ActionResult take(Tx tx, OutboxLetter letter);
    }

    private ActionResult onLetter(User who, long letter, Step step) {
        return acting.<ActionResult>inTurn(tx -> {
            Optional<OutboxLetter> found = tx.outbox().find(letter);
            if (found.isEmpty()) {
                return new ActionResult.Refused("no-letter", "There is no letter " + letter + ".");
            }
            Permission needed = found.get().kind().result() ? Permission.RELEASE : Permission.TRIAGE;
            return acting.rights().may(who, needed) ? step.take(tx, found.get()) : Acting.forbidden(who, needed);
        });
    }

    private static boolean moved(Tx tx, OutboxLetter l, OutboxState to, User who, Instant now) {
        boolean moved = tx.outbox().move(l, to, now, l.notBefore(), Optional.empty());
        if (moved) {
            tx.record(
                    "letter-" + to.code(), who.id(), List.of(l.kind().code()), Map.of("letter", Long.toString(l.id())));
        }
        return moved;
    }

    private ActionResult done(Tx tx, OutboxLetter l, User who, String words) {
        l.submission()
                .flatMap(id -> tx.submissions().find(id))
                .ifPresent(s -> letters.comeBack(tx, s, l.kind(), who.id()));
        return found(tx, l, words);
    }

    private static ActionResult found(Tx tx, OutboxLetter l, String words) {
        return l.submission()
                .flatMap(id -> tx.submissions().find(id))
                .<ActionResult>map(s -> new ActionResult.Done(s, Optional.of(l.id()), words))
                .orElseGet(() -> new ActionResult.Refused("no-submission", words));
    }
}
