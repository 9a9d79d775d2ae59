package org.tidegate.casework;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.finding.Findings;
import org.tidegate.message.Envelope;
import org.tidegate.store.Tx;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;
import org.tidegate.work.UserId;

/**
 * Letters of which nobody could be sure show by what comes in that they went: our own copy, or a person's answer (RFC 5322 §3.6.4). The
 * Message-IDs are drawn at random, so that only who has a letter can name it.
 */
final class SignsOfLife {

    private static final int MOST_REFERENCES = 20;

    private SignsOfLife() {}

    static void read(Tx tx, Findings findings, Instant now) {
        Envelope envelope = findings.envelope();
        envelope.messageId().ifPresent(id -> went(tx, id, "Our own copy of it came to the mailbox.", now));
        if (AnswerRules.byAPerson(findings)) {
            List<String> thread = envelope.references();
            thread.subList(Math.max(0, thread.size() - MOST_REFERENCES), thread.size())
                    .forEach(id -> went(tx, id, "An answer to it came.", now));
        }
    }

    private static void went(Tx tx, String messageId, String words, Instant now) {
        Optional<OutboxLetter> letter =
                tx.outbox().byMessageId(messageId).filter(l -> l.state() == OutboxState.UNCERTAIN);
        letter.filter(l -> tx.outbox().move(l, OutboxState.SENT, now, l.notBefore(), Optional.of(words)))
                .ifPresent(l -> tx.record(
                        "letter-sent",
                        UserId.DAEMON,
                        List.of(l.kind().code()),
                        Map.of("letter", Long.toString(l.id()))));
    }
}
