package org.tidegate.casework;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.tidegate.examination.Assessment;
import org.tidegate.rules.RoleRules.Permission;
import org.tidegate.rules.Rules;
import org.tidegate.store.Tx;
import org.tidegate.work.Claim;
import org.tidegate.work.MessageId;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.User;
import org.tidegate.work.UserId;

/** What every action has in common: one transaction, the right, the shown version, the claim, and the event. */
final class Acting {

    private static final User NOBODY = new User(UserId.DAEMON, "", Set.of(), "", false);

    private final Assessing assessing;
    private final CaseReader reader;
    private final Rights rights;
    private final Rules rules;
    private final Clock clock;

    Acting(Assessing assessing, CaseReader reader, Rules rules, Clock clock) {
        this.assessing = assessing;
        this.reader = reader;
        this.rights = new Rights(rules.roles());
        this.rules = rules;
        this.clock = clock;
    }

    /** What an action does once it may. It writes nothing before it is sure to end in {@link ActionResult.Done}. */
    @FunctionalInterface
    interface Step {
        ActionResult take(Case c);
    }

    ActionResult on(Ticket ticket, User who, Permission needed, Step step) {
        return assessing.<ActionResult>inTurn(tx -> {
            Optional<Submission> found = tx.submissions().find(ticket.id());
            if (!rights.may(who, needed)) {
                return forbidden(who, needed);
            }
            if (found.isEmpty()) {
                return new ActionResult.Missing(ticket.id());
            }
            return take(tx, ticket, who, step, found.get());
        });
    }

    private ActionResult take(Tx tx, Ticket ticket, User who, Step step, Submission submission) {
        Optional<Claim> other =
                tx.claims().of(ticket.id(), now()).filter(c -> !c.who().equals(who.id()));
        if (other.isPresent()) {
            return new ActionResult.Taken(other.get());
        }
        if (submission.version() != ticket.version()) {
            return new ActionResult.Stale(submission);
        }
        return reader.intact(tx, submission)
                .map(a -> step.take(new Case(tx, submission, a, who.id(), who, now())))
                .orElseGet(() -> new ActionResult.Refused(
                        "forgotten", submission.id() + " is forgotten: its messages are gone."));
    }

    /** A submission to look at; empty where it is gone or forgotten. */
    Optional<Case> seen(Tx tx, SubmissionId id) {
        return tx.submissions()
                .find(id)
                .flatMap(s -> reader.intact(tx, s).map(a -> new Case(tx, s, a, UserId.DAEMON, NOBODY, now())));
    }

    static ActionResult forbidden(User who, Permission needed) {
        return new ActionResult.Forbidden(
                who.id().value() + " has no role that may " + needed.name().toLowerCase(java.util.Locale.ROOT) + ".");
    }

    /** Only within {@link #inTurn}: what was known of the message's pictures. */
    void forgetPictures(MessageId id) {
        assessing.forgetPictures(id);
    }

    /** Runs something that is about no single submission. */
    <T> T inTurn(Function<Tx, T> body) {
        return assessing.inTurn(body);
    }

    Rights rights() {
        return rights;
    }

    Rules rules() {
        return rules;
    }

    CaseReader reader() {
        return reader;
    }

    Instant now() {
        return clock.instant();
    }

    /** Places and assesses anew what depends on the submission's messages, in the same transaction. */
    void assessAgain(Case c) {
        c.submission().messages().forEach(m -> assessing.fold(c.tx(), m));
    }

    /**
     * A submission in a transaction that may change it.
     *
     * @param who whose name goes into the ledger
     */
    record Case(Tx tx, Submission submission, Assessment assessment, UserId who, User user, Instant now) {

        SubmissionId id() {
            return submission.id();
        }

        /** Moves the submission on and records why. */
        Submission move(SubmissionState state, String event, List<String> codes) {
            Submission moved = submission.in(state);
            if (!tx.submissions().save(moved)) {
                throw new IllegalStateException(id() + " was changed by someone else within one turn");
            }
            if (state != SubmissionState.WAITING) {
                tx.waits().drop(id());
            }
            record(event, codes, Map.of("state", state.code()));
            return moved;
        }

        void record(String event, List<String> codes, Map<String, String> more) {
            Map<String, String> references = new TreeMap<>(more);
            references.put("submission", id().toString());
            references.put("assessment", Integer.toString(submission.assessment()));
            tx.record(event, who, codes, references);
        }

        /** As it stands after what was done in this transaction. */
        Submission fresh() {
            return tx.submissions().find(id()).orElse(submission);
        }
    }
}
