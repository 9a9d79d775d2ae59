package org.tidegate.console;

import java.time.Instant;
import java.util.List;
import org.tidegate.work.Enclosed;
import org.tidegate.work.LetterText;
import org.tidegate.work.OutboxLetter;
import org.tidegate.work.OutboxState;
import org.tidegate.work.SubmissionId;

/**
 * A letter of the outbox in words.
 *
 * @param submission number of the page that it is about; 0 where it is about none
 */
record LetterLine(
        long id,
        long submission,
        String kind,
        String state,
        String look,
        String to,
        String subject,
        String text,
        String enclosed,
        String when,
        String who,
        String outcome,
        boolean recallable,
        boolean uncertain) {

    /** Of the submission that it is about, as people say it. */
    public String number() {
        return new SubmissionId(submission).toString();
    }

    static List<LetterLine> all(List<OutboxLetter> letters, Instant now, Words words) {
        return letters.stream().map(l -> of(l, now, words)).toList();
    }

    private static LetterLine of(OutboxLetter l, Instant now, Words words) {
        return new LetterLine(
                l.id(),
                l.submission().map(s -> s.value()).orElse(0L),
                words.say("letter." + l.kind().code()),
                words.say("outbox." + l.state().code()),
                l.state().code(),
                l.text().map(LetterText::to).orElse(""),
                l.text().map(LetterText::subject).orElse(""),
                l.text().map(LetterText::text).orElse(""),
                l.text().flatMap(LetterText::enclosed).map(Enclosed::fileName).orElse(""),
                when(l, now, words),
                l.who().value(),
                l.outcome().orElse(""),
                l.state() == OutboxState.WAITING,
                l.state() == OutboxState.UNCERTAIN);
    }

    private static String when(OutboxLetter l, Instant now, Words words) {
        return l.state() == OutboxState.WAITING
                ? words.say("outbox.goes", words.clock(l.notBefore()))
                : words.both(l.finished().or(l::attempted).orElse(l.made()), now);
    }
}
