package org.tidegate.casework;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.mailbox.Letter;
import org.tidegate.mailbox.Outgoing;
import org.tidegate.mailbox.SendResult;
import org.tidegate.rules.Rules;
import org.tidegate.store.Tx;
import org.tidegate.work.LetterKind;
import org.tidegate.work.LetterText;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;
import org.tidegate.work.PolicyAct;
import org.tidegate.work.Submission;
import org.tidegate.work.SubmissionState;
import org.tidegate.work.UserId;

/**
 * Sends what is due, each letter at most once: that sending begins is committed before the server is asked, and a letter found so
 * after a crash may have gone, so that only a person sends it again (DESIGN 10).
 */
public final class Sending {

    /** Longer than any try takes: connecting, and the ten minutes of RFC 5321 §4.5.3.2.6 for the last answer. */
    static final Duration LONGEST = Duration.ofMinutes(20);

    private static final Duration FIRST_PAUSE = Duration.ofMinutes(1);
    private static final int MOST_DOUBLINGS = 6;
    private static final int MOST_TRIES = 12;

    private final Acting acting;
    private final LetterDesk letters;
    private final Outgoing outgoing;

    Sending(Acting acting, LetterDesk letters, Outgoing outgoing) {
        this.acting = acting;
        this.letters = letters;
        this.outgoing = outgoing;
    }

    /** How a letter left the outbox for this time. */
    public record Step(OutboxLetter letter, OutboxState state, Optional<String> words) {}

    /**
     * Handles the letter that has waited longest.
     *
     * @return what became of it; empty where none is due
     */
    public Optional<Step> work() {
        return acting.<Optional<Step>>inTurn(this::begin)
                .map(step -> step.state() == OutboxState.ATTEMPTING ? send(step.letter()) : step);
    }

    /**
     * Marks as uncertain whatever began to be sent longer ago than this and never came to an end.
     *
     * @return how many letters a person has to look at
     */
    public int markUnfinished(Duration age) {
        return acting.<Integer>inTurn(tx -> {
            Instant moment = acting.now().minus(age);
            List<OutboxLetter> open = tx.outbox().attemptingSinceBefore(moment.plusMillis(1));
            open.forEach(
                    l -> end(tx, l, OutboxState.UNCERTAIN, Optional.of("The program ended while it was sending.")));
            return open.size();
        });
    }

    private Optional<Step> begin(Tx tx) {
        return tx.outbox().next(acting.now()).map(letter -> begin(tx, letter));
    }

    private Step begin(Tx tx, OutboxLetter letter) {
        if (letter.notAfter().filter(t -> !t.isAfter(acting.now())).isPresent()) {
            return end(tx, letter, OutboxState.TOO_LATE, Optional.of("What it asks for would come too late."));
        }
        if (letter.who().equals(UserId.POLICY) && !letter.kind().internal() && overtaken(tx, letter)) {
            return end(tx, letter, OutboxState.RECALLED, Optional.of("Something newer came in before it went."));
        }
        if (letter.text().isEmpty()) {
            return end(tx, letter, OutboxState.NOT_ALLOWED, Optional.of("Its text is forgotten."));
        }
        if (!letter.kind().internal()
                && letters.answers().own(letter.text().get().to())) {
            return end(tx, letter, OutboxState.NOT_ALLOWED, Optional.of("It would go to our own address."));
        }
        if (needless(tx, letter)) {
            return end(tx, letter, OutboxState.RECALLED, Optional.of("What it reminds of came meanwhile."));
        }
        return end(tx, letter, OutboxState.ATTEMPTING, Optional.empty());
    }

    /** What the policy wrote stands for what it saw: anything newer is considered anew. */
    private static boolean overtaken(Tx tx, OutboxLetter letter) {
        Optional<Submission> submission =
                letter.submission().flatMap(id -> tx.submissions().find(id));
        Optional<PolicyAct> act = tx.policyActs().ofLetter(letter.id());
        if (submission.isEmpty() || act.isEmpty() || submission.get().urgent()) {
            return true;
        }
        return letter.kind() == LetterKind.REQUEST
                && (submission.get().state() != SubmissionState.WAITING
                        || submission.get().assessment() != act.get().assessment());
    }

    /** It reminds of a test of which something came while it waited. */
    private static boolean needless(Tx tx, OutboxLetter letter) {
        return tx.reminders()
                .test(letter.id())
                .filter(t -> tx.submissions().heardFrom().contains(t.toString()))
                .isPresent();
    }

    private Step send(OutboxLetter letter) {
        SendResult result = tried(letter);
        return acting.inTurn(tx -> {
            OutboxLetter attempting = tx.outbox().find(letter.id()).orElseThrow();
            if (result instanceof SendResult.Accepted) {
                return end(tx, attempting, OutboxState.SENT, Optional.empty());
            }
            if (result instanceof SendResult.Uncertain u) {
                return end(tx, attempting, OutboxState.UNCERTAIN, Optional.of(u.words()));
            }
            return refused(tx, attempting, (SendResult.Refused) result);
        });
    }

    private SendResult tried(OutboxLetter letter) {
        try {
            return outgoing.send(written(letter, letter.text().orElseThrow()).mail());
        } catch (IllegalArgumentException e) {
            return new SendResult.Refused(true, String.valueOf(e.getMessage()));
        }
    }

    private Letter written(OutboxLetter letter, LetterText text) {
        Rules rules = acting.rules();
        return new Letter(
                rules.service().senderAddress(),
                rules.service().senderName(),
                text.to(),
                letter.messageId(),
                acting.now().atZone(rules.timing().zone()),
                text.language(),
                text.subject(),
                text.text(),
                text.inReplyTo(),
                text.references(),
                text.enclosed().map(e -> new Letter.File(e.fileName(), e.mediaType(), e.content())));
    }

    private Step refused(Tx tx, OutboxLetter letter, SendResult.Refused r) {
        boolean last = r.permanent() || letter.tries() >= MOST_TRIES;
        if (last) {
            return end(tx, letter, OutboxState.REFUSED, Optional.of(r.words()));
        }
        Duration pause = FIRST_PAUSE.multipliedBy(1L << Math.min(letter.tries(), MOST_DOUBLINGS));
        return move(tx, letter, OutboxState.WAITING, acting.now().plus(pause), Optional.of(r.words()));
    }

    private Step end(Tx tx, OutboxLetter letter, OutboxState to, Optional<String> words) {
        Step step = move(tx, letter, to, letter.notBefore(), words);
        if (to.failed() || to == OutboxState.RECALLED) {
            letter.submission()
                    .flatMap(id -> tx.submissions().find(id))
                    .filter(s -> to.failed() || s.state() == SubmissionState.WAITING)
                    .ifPresent(s -> letters.comeBack(tx, s, letter.kind(), UserId.DAEMON));
        }
        return step;
    }

    private Step move(Tx tx, OutboxLetter letter, OutboxState to, Instant notBefore, Optional<String> words) {
        if (!tx.outbox().move(letter, to, acting.now(), notBefore, words)) {
            throw new IllegalStateException("letter " + letter.id() + " was changed by someone else within one turn");
        }
        tx.record(
                "letter-" + to.code(),
                to == OutboxState.RECALLED ? UserId.POLICY : UserId.DAEMON,
                List.of(letter.kind().code()),
                Map.of("letter", Long.toString(letter.id())));
        return new Step(letter, to, words);
    }
}
