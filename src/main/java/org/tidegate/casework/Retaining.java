package org.tidegate.casework;

import java.time.Instant;
import java.time.Period;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.tidegate.rules.RoleRules.Permission;
import org.tidegate.store.CaseKeys.Scope;
import org.tidegate.store.Cutoffs;
import org.tidegate.store.PersonLinks.Part;
import org.tidegate.store.Retention.Counts;
import org.tidegate.store.Retention.Hold;
import org.tidegate.store.Store;
import org.tidegate.store.StoredMessage;
import org.tidegate.store.Tx;
import org.tidegate.work.Ending;
import org.tidegate.work.MessageId;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.User;

/** What the data protection officer sees and does: what is kept and until when, forgetting now, and holding back. */
public final class Retaining {

    private static final int WEEKS = 4;
    private static final int MOST = 100;

    private final Store store;
    private final Acting acting;

    Retaining(Store store, Acting acting) {
        this.store = store;
        this.acting = acting;
    }

    /** Why a person's mail is forgotten before its time. */
    public enum Why {
        ASKED_FOR,
        CONSENT_WITHDRAWN,
        NOT_FOR_US,
        OUR_ERROR;

        /** The stable form: {@code asked-for}. */
        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** Why something is kept beyond its time. */
    public enum Need {
        DISPUTE,
        AUTHORITY,
        INCIDENT;

        /** The stable form: {@code dispute}. */
        public String code() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** What became of it. */
    public sealed interface Outcome {
        /** @param about every submission that it touched */
        record Done(List<SubmissionId> about) implements Outcome {}

        record Forbidden(String words) implements Outcome {}

        /** @param code why, stable: {@code missing} and so on */
        record Refused(String code, String words) implements Outcome {}
    }

    /** How many messages fall due from (inclusive) until (exclusive). */
    public record Week(Instant from, Instant until, int messages) {}

    /**
     * What is kept.
     *
     * @param weeks the next four
     * @param overdue submissions, open or held back, that keep messages beyond their time; the first hundred
     */
    public record Stock(Counts counts, List<Week> weeks, List<SubmissionId> overdue, List<Hold> holds) {}

    public Stock stock() {
        return store.read(tx -> new Stock(
                tx.retention().counts(), weeks(tx), overdue(tx), tx.retention().holds()));
    }

    private List<Week> weeks(Tx tx) {
        List<Week> weeks = new ArrayList<>();
        Instant from = acting.now();
        int before = tx.retention().dueBy(cutoffs(from));
        for (int i = 0; i < WEEKS; i++) {
            Instant until = from.atZone(acting.rules().timing().zone())
                    .plus(Period.ofWeeks(1))
                    .toInstant();
            int by = tx.retention().dueBy(cutoffs(until));
            weeks.add(new Week(from, until, by - before));
            from = until;
            before = by;
        }
        return List.copyOf(weeks);
    }

    private Cutoffs cutoffs(Instant time) {
        return Cutoffs.at(
                time, acting.rules().retention(), acting.rules().timing().zone());
    }

    private List<SubmissionId> overdue(Tx tx) {
        return tx.retention().overdue(cutoffs(acting.now()), MOST).stream()
                .flatMap(d -> sharing(tx, d.message()))
                .distinct()
                .toList();
    }

    /**
     * Forgets a person's messages now. A message that is split is one: the submissions that share it lose it too, and all that
     * are open are closed. Readings and result letters stay for their own term.
     */
    public Outcome forget(User who, SubmissionId id, Why why) {
        return on(who, tx -> forget(tx, who, id, why));
    }

    private Outcome forget(Tx tx, User who, SubmissionId id, Why why) {
        Optional<Submission> found = tx.submissions().find(id);
        if (found.isEmpty()) {
            return missing(id);
        }
        Set<SubmissionId> touched = new LinkedHashSet<>(Set.of(id));
        found.get().messages().forEach(m -> sharing(tx, m).forEach(touched::add));
        Optional<Outcome> held =
                touched.stream().flatMap(s -> heldBack(tx, s).stream()).findFirst();
        return held.or(() ->
                        touched.stream().flatMap(s -> writing(tx, s).stream()).findFirst())
                .orElseGet(() -> forget(tx, who, found.get(), touched, why));
    }

    private Outcome forget(Tx tx, User who, Submission submission, Set<SubmissionId> touched, Why why) {
        for (MessageId message : submission.messages()) {
            Forgetting.forget(tx, message, who.id(), why.code());
            Forgetting.cassettes(tx, message, who.id(), why.code());
            tx.retention().dropFingerprints(message);
            acting.forgetPictures(message);
        }
        tx.caseKeys().destroy(Scope.CASE, submission.id().value());
        touched.forEach(s -> close(tx, who, s, why));
        return new Outcome.Done(List.copyOf(touched));
    }

    private void close(Tx tx, User who, SubmissionId id, Why why) {
        Submission now = tx.submissions().find(id).orElseThrow();
        tx.endings().append(new Ending(id, Ending.Kind.FORGOTTEN, why.code(), who.id(), acting.now()));
        boolean open = now.state().waitsForAPerson() || now.state() == SubmissionState.WAITING;
        tx.submissions().save(now.in(open ? SubmissionState.CLOSED : now.state()));
        tx.waits().drop(id);
        tx.record("closed-forgotten", who.id(), List.of(why.code()), Map.of("submission", id.toString()));
    }

    /** Keeps what a submission has beyond its time, until it is lifted. */
    public Outcome holdBack(User who, SubmissionId id, Need need) {
        return on(who, tx -> {
            if (tx.submissions().find(id).isEmpty()) {
                return missing(id);
            }
            if (!tx.retention().hold(new Hold(id, need.code(), who.id(), acting.now()))) {
                return new Outcome.Refused("held-back", id + " is held back already.");
            }
            tx.record("held-back", who.id(), List.of(need.code()), Map.of("submission", id.toString()));
            return new Outcome.Done(List.of(id));
        });
    }

    public Outcome lift(User who, SubmissionId id) {
        return on(who, tx -> {
            if (!tx.retention().lift(id)) {
                return new Outcome.Refused("not-held-back", id + " is not held back.");
            }
            tx.record("hold-lifted", who.id(), List.of(), Map.of("submission", id.toString()));
            return new Outcome.Done(List.of(id));
        });
    }

    private Outcome on(User who, java.util.function.Function<Tx, Outcome> body) {
        return acting.rights().may(who, Permission.FORGET)
                ? acting.inTurn(body)
                : new Outcome.Forbidden(Acting.forbidden(who, Permission.FORGET).words());
    }

    private static Outcome missing(SubmissionId id) {
        return new Outcome.Refused("missing", "There is no submission " + id + ".");
    }

    private static Optional<Outcome> heldBack(Tx tx, SubmissionId id) {
        boolean held =
                tx.retention().holds().stream().anyMatch(h -> h.submission().equals(id));
        return held
                ? Optional.of(new Outcome.Refused("held-back", id + " is held back: lift that first."))
                : Optional.empty();
    }

    private static Optional<Outcome> writing(Tx tx, SubmissionId id) {
        return tx.outbox().of(id).stream().anyMatch(l -> Sharing.UNDER_WAY.contains(l.state()))
                ? Optional.of(new Outcome.Refused(
                        "letter-waiting",
                        "A letter about " + id + " is on its way out: wait until it went, or call it back."))
                : Optional.empty();
    }

    /** Every submission that has a share of the message. */
    private static Stream<SubmissionId> sharing(Tx tx, MessageId id) {
        return Stream.concat(
                tx.messages().find(id).flatMap(StoredMessage::submission).stream(),
                tx.personLinks().parts(id).stream().map(Part::submission));
    }
}
