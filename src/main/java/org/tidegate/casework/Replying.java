package org.tidegate.casework;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.casework.Acting.Case;
import org.tidegate.casework.LetterWriter.Written;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.DiscrepancyCode;
import org.tidegate.rules.RoleRules.Permission;
import org.tidegate.store.Store;
import org.tidegate.store.Tx;
import org.tidegate.work.Ending;
import org.tidegate.work.Judgement;
import org.tidegate.work.LetterKind;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.SuggestedReply;
import org.tidegate.work.User;

/** Answering what is held: the suggested reply as it is or edited, in the language that serves. */
public final class Replying {

    private final Store store;
    private final Acting acting;
    private final LetterDesk letters;

    Replying(Store store, Acting acting, LetterDesk letters) {
        this.store = store;
        this.acting = acting;
        this.letters = letters;
    }

    /** What happens to the submission once the reply is in the outbox. */
    public enum Then {
        /** It waits for the participant. */
        WAIT,
        /** It stays in the queue: a person still has to decide. */
        STAY,
        /** It is closed: nothing more is to be done. */
        CLOSE
    }

    /**
     * A reply to edit.
     *
     * @param ticket to hand back with the answer
     * @param to the address that it would go to; empty where none may be written to
     * @param others further addresses that a person may choose instead
     * @param language of the text, BCP 47
     * @param languages all that there are texts in
     * @param notAfter what it asks for comes too late after this
     */
    public record Draft(
            Ticket ticket,
            Optional<String> to,
            List<String> others,
            String language,
            List<String> languages,
            String subject,
            String text,
            Optional<Instant> notAfter,
            Then then) {}

    /**
     * What a person sends.
     *
     * @param to the booked address, or one that the participant wrote from
     * @param notAfter as the draft said it
     */
    public record Edited(String to, String language, String text, Optional<Instant> notAfter, Then then) {

        public static Edited asIs(Draft draft) {
            return new Edited(draft.to().orElse(""), draft.language(), draft.text(), draft.notAfter(), draft.then());
        }
    }

    /**
     * The reply as it stands at this moment, about what still holds the submission.
     *
     * @param language BCP 47; empty for the participant's own
     * @return empty where nothing holds it, no text fits, or a message is forgotten
     */
    public Optional<Draft> draft(SubmissionId id, Optional<String> language) {
        return store.read(tx -> tx.submissions()
                .find(id)
                .flatMap(s -> acting.reader()
                        .intact(tx, s)
                        .flatMap(a -> draft(tx, s, acting.reader().matter(tx, s, a), language))));
    }

    private Optional<Draft> draft(Tx tx, Submission s, Matter matter, Optional<String> language) {
        List<Discrepancy> open = OpenHolds.of(tx, s.id(), matter.assessment());
        List<String> addresses = acting.reader().addresses(tx, s, matter);
        return new RequestWriter(acting.rules())
                .suggest(matter, open, language.orElseGet(matter::language), acting.now())
                .map(r -> new Draft(
                        Ticket.of(s),
                        addresses.stream().findFirst(),
                        addresses.stream().skip(1).toList(),
                        r.language(),
                        List.copyOf(acting.rules().texts().byLanguage().keySet()),
                        r.subject(),
                        r.text(),
                        r.notAfter(),
                        then(r, open)));
    }

    private static Then then(SuggestedReply reply, List<Discrepancy> open) {
        boolean writesOnly = open.stream().allMatch(d -> d.code() == DiscrepancyCode.CORRESPONDENCE);
        if (writesOnly) {
            return Then.CLOSE;
        }
        return reply.notAfter().isPresent() ? Then.WAIT : Then.STAY;
    }

    /** What is wrong with an edited text, in words; empty where it can go out. */
    public List<String> problems(SubmissionId id, Edited edited) {
        return store.read(tx -> tx.submissions()
                .find(id)
                .flatMap(s -> acting.reader()
                        .assessment(tx, s)
                        .map(a -> new ReplyCheck(acting.rules())
                                .problems(edited, acting.reader().matter(tx, s, a))))
                .orElse(List.of("There is no submission " + id + ".")));
    }

    /** Puts the reply into the outbox; within the delay it can be called back ({@link OutboxDesk#recall}). */
    public ActionResult send(User who, Ticket ticket, Edited edited) {
        return acting.on(ticket, who, Permission.TRIAGE, c -> {
            Matter matter = acting.reader().matter(c.tx(), c.submission(), c.assessment());
            return refused(c, matter, edited).orElseGet(() -> send(c, matter, edited));
        });
    }

    /** The suggested reply as it is, to each of these. A failure of one leaves the others. */
    public Map<SubmissionId, ActionResult> sendAll(User who, List<Ticket> tickets) {
        Map<SubmissionId, ActionResult> all = new LinkedHashMap<>();
        for (Ticket t : tickets) {
            ActionResult result = draft(t.id(), Optional.empty())
                    .map(d -> send(who, t, Edited.asIs(d)))
                    .orElseGet(() ->
                            new ActionResult.Refused("no-draft", "There is nothing to answer in " + t.id() + "."));
            all.put(t.id(), result);
        }
        return all;
    }

    private Optional<ActionResult> refused(Case c, Matter matter, Edited edited) {
        if (c.submission().state() != SubmissionState.HELD && c.submission().state() != SubmissionState.WAITING) {
            return refusal("state", c.id() + " is " + c.submission().state().code() + ": it is not answered now.");
        }
        if (edited.notAfter().filter(t -> !t.isAfter(c.now())).isPresent()) {
            return refusal("too-late", "What the letter asks for would come too late. Look at the new text, please.");
        }
        if (!acting.reader().addresses(c.tx(), c.submission(), matter).contains(edited.to())) {
            return refusal("no-address", "The letter may go to the booked address or the writer's own only.");
        }
        List<String> problems = new ReplyCheck(acting.rules()).problems(edited, matter);
        if (!problems.isEmpty()) {
            return refusal("text", String.join(" ", problems));
        }
        return letters.refused(c, LetterKind.REQUEST, edited.to());
    }

    private static Optional<ActionResult> refusal(String code, String words) {
        return Optional.of(new ActionResult.Refused(code, words));
    }

    private ActionResult send(Case c, Matter matter, Edited edited) {
        List<DiscrepancyCode> asked = OpenHolds.of(c.tx(), c.id(), c.assessment()).stream()
                .map(Discrepancy::code)
                .toList();
        Written written = new Written(
                acting.rules().texts().languageFor(edited.language()),
                new ReplyCheck(acting.rules()).subject(edited, matter),
                edited.text());
        long number = letters.put(c, LetterKind.REQUEST, edited.to(), written, "sent-by-person", edited.notAfter());
        Submission moved = move(c, matter, edited, asked);
        return new ActionResult.Done(
                moved, Optional.of(number), "The letter goes out soon; until then it can be called back.");
    }

    private Submission move(Case c, Matter matter, Edited edited, List<DiscrepancyCode> asked) {
        List<String> codes = new ArrayList<>();
        asked.forEach(code -> codes.add(code.code()));
        switch (edited.then()) {
            case WAIT -> {
                asked.forEach(code -> c.tx().judgements().append(ask(c, code)));
                Instant until = matter.deadlines().waitUntil(edited.notAfter());
                Submission moved = c.move(SubmissionState.WAITING, "asked", codes);
                c.tx().waits().put(c.id(), c.now(), until);
                return moved;
            }
            case CLOSE -> {
                c.tx().endings().append(new Ending(c.id(), Ending.Kind.ANSWERED, "none", c.who(), c.now()));
                return c.move(SubmissionState.CLOSED, "closed-answered", codes);
            }
            case STAY -> {
                return c.move(c.submission().state(), "explained", codes);
            }
        }
        throw new IllegalStateException("no such step: " + edited.then());
    }

    private static Judgement ask(Case c, DiscrepancyCode code) {
        return new Judgement(
                c.id(),
                c.submission().assessment(),
                code,
                Judgement.Decision.ASK,
                "missing-part",
                c.who(),
                c.now(),
                Optional.empty());
    }
}
