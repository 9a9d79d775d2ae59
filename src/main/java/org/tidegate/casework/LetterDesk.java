package org.tidegate.casework;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tidegate.casework.Acting.Case;
import org.tidegate.casework.LetterWriter.Written;
import org.tidegate.finding.Findings;
import org.tidegate.rules.Rules;
import org.tidegate.store.NewLetter;
import org.tidegate.store.Tx;
import org.tidegate.work.LetterKind;
import org.tidegate.work.LetterText;
import org.tidegate.work.OutboxState;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionId;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.UserId;

/** Puts letters about submissions into the outbox. */
final class LetterDesk {

    /** Letters that settle something for the time being; the others leave a submission as it is. */
    private static final Set<LetterKind> SETTLING = EnumSet.of(
            LetterKind.REQUEST,
            LetterKind.EXPIRED,
            LetterKind.VOIDED,
            LetterKind.REPEAT,
            LetterKind.RESULT,
            LetterKind.AMENDED,
            LetterKind.WITHDRAWN);

    private final CaseReader reader;
    private final MessageVault vault;
    private final Rules rules;
    private final AnswerRules answers;
    private final LetterWriter writer;

    LetterDesk(CaseReader reader, MessageVault vault, Rules rules) {
        this.reader = reader;
        this.vault = vault;
        this.rules = rules;
        this.answers = new AnswerRules(rules, vault);
        this.writer = new LetterWriter(rules);
    }

    AnswerRules answers() {
        return answers;
    }

    LetterWriter writer() {
        return writer;
    }

    /** Why a letter of this kind cannot go to the booked address; empty where it can. */
    Optional<ActionResult> refused(Case c, LetterKind kind) {
        Optional<String> to =
                reader.matter(c.tx(), c.submission(), c.assessment()).bookedAddress();
        if (to.isEmpty()) {
            return Optional.of(new ActionResult.Refused(
                    "no-address",
                    "No booked address is known: link the submission to a test, or call the participant."));
        }
        return refused(c, kind, to.get());
    }

    Optional<ActionResult> refused(Case c, LetterKind kind, String to) {
        return answers.ban(c.tx(), kind, to, reader.findings(c.tx(), c.submission()), c.now())
                .map(b -> new ActionResult.Refused(b.code(), b.words()));
    }

    /** A plain letter to the booked address; {@link #refused} was asked before. @return its number in the outbox */
    long write(Case c, LetterKind kind, String reasonCode) {
        Matter matter = reader.matter(c.tx(), c.submission(), c.assessment());
        return put(
                c,
                kind,
                matter.bookedAddress().orElseThrow(),
                writer.plain(kind, matter, Optional.empty()),
                reasonCode,
                Optional.empty());
    }

    /** Puts a finished letter into the outbox, with the delay in which a person can call it back. */
    long put(Case c, LetterKind kind, String to, Written written, String reasonCode, Optional<Instant> notAfter) {
        boolean byItself = c.who().equals(UserId.DAEMON);
        Instant notBefore = byItself ? c.now() : c.now().plus(rules.service().undoDelay());
        LetterText text = threaded(c.tx(), c.submission(), to, written);
        if (!c.who().equals(UserId.POLICY)) {
            recallOfPolicy(c);
        }
        return queue(
                c.tx(),
                new NewLetter(
                        Optional.of(c.id()),
                        kind,
                        text,
                        answers.mark(to),
                        messageId(),
                        reasonCode,
                        c.who(),
                        c.now(),
                        notBefore,
                        notAfter));
    }

    /** What a person writes takes the place of what the policy wrote and has not gone yet. */
    private static void recallOfPolicy(Case c) {
        c.tx().outbox().of(c.id()).stream()
                .filter(l -> l.state() == OutboxState.WAITING && l.who().equals(UserId.POLICY))
                .filter(l -> !l.kind().internal())
                .filter(l -> c.tx().outbox().move(l, OutboxState.RECALLED, c.now(), l.notBefore(), Optional.empty()))
                .forEach(l ->
                        c.record("letter-recalled", List.of(l.kind().code()), Map.of("letter", Long.toString(l.id()))));
    }

    /** A letter among ourselves, written by the policy; it goes at once. */
    NewLetter internal(Optional<SubmissionId> about, LetterKind kind, LetterText text, String reasonCode, Instant now) {
        return new NewLetter(
                about,
                kind,
                text,
                answers.mark(text.to()),
                messageId(),
                reasonCode,
                UserId.POLICY,
                now,
                now,
                Optional.empty());
    }

    /** A letter that is about no submission. */
    long queue(Tx tx, NewLetter letter) {
        long number = tx.outbox().add(letter);
        List<String> codes = List.of(letter.kind().code(), letter.reasonCode());
        Map<String, String> references = letter.submission()
                .map(s -> Map.of("letter", Long.toString(number), "submission", s.toString()))
                .orElseGet(() -> Map.of("letter", Long.toString(number)));
        tx.record("letter-queued", letter.who(), codes, references);
        return number;
    }

    /** A letter did not go: what it would have settled is open again. */
    void comeBack(Tx tx, Submission s, LetterKind kind, UserId who) {
        SubmissionState back = kind.result() ? SubmissionState.READ : SubmissionState.HELD;
        boolean settled = s.state() == SubmissionState.WAITING || s.state() == SubmissionState.CLOSED;
        if (!settled || !SETTLING.contains(kind)) {
            return;
        }
        if (!tx.submissions().save(s.in(back))) {
            throw new IllegalStateException(s.id() + " was changed by someone else within one turn");
        }
        tx.waits().drop(s.id());
        tx.record("came-back", who, List.of(kind.code()), Map.of("submission", s.id().toString()));
    }

    /** RFC 5322 §3.6.4: says nothing but where it comes from. */
    String messageId() {
        String sender = rules.service().senderAddress();
        return vault.freshName() + sender.substring(sender.indexOf('@'));
    }

    String mark(String address) {
        return answers.mark(address);
    }

    private LetterText threaded(Tx tx, Submission submission, String to, Written written) {
        List<Findings> messages = reader.findings(tx, submission);
        Optional<Findings> last =
                messages.isEmpty() ? Optional.empty() : Optional.of(messages.get(messages.size() - 1));
        Optional<String> answered = last.flatMap(f -> f.envelope().messageId());
        List<String> references = new ArrayList<>();
        last.ifPresent(f -> references.addAll(f.envelope().references()));
        answered.ifPresent(references::add);
        return new LetterText(
                to,
                written.language(),
                written.subject(),
                written.text(),
                answered,
                distinct(references),
                written.enclosed());
    }

    private static List<String> distinct(List<String> all) {
        return all.stream().distinct().toList();
    }
}
