package org.tidegate.examination.timing;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tidegate.finding.Event;
import org.tidegate.finding.Level;
import org.tidegate.finding.Verdict;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.finding.WindowVerdict.Check;
import org.tidegate.rules.TimingRules;

/** A message without the cassette completes an earlier one: it counts until {@code supplement_within} from the first. */
final class Supplements {

    /** When the first message of the submission reached us, as the event that supplements count from. */
    private static final Event FIRST = Event.hop(0);

    private final TimeCase submission;
    private final TimingRules rules;
    private final Wording wording;

    Supplements(TimeCase submission, TimingRules rules, Wording wording) {
        this.submission = submission;
        this.rules = rules;
        this.wording = wording;
    }

    /** The verdict on the first supplement that came too late. */
    Optional<WindowVerdict> late() {
        List<MessageEvidence> messages = submission.messages();
        return IntStream.range(1, messages.size())
                .filter(m -> !messages.get(m).carriesCassette())
                .boxed()
                .flatMap(m -> late(messages.get(m)).stream())
                .findFirst();
    }

    private Optional<WindowVerdict> late(MessageEvidence supplement) {
        List<Constraint> clues = Stream.concat(
                        arrival(submission.messages().get(0), FIRST, "the first message"),
                        arrival(supplement, Event.ARRIVED, "the supplement"))
                .toList();
        Duration within = submission.protocol().supplementWithin();
        Question limit = Question.notLater(Check.SENT, FIRST, Event.ARRIVED, within);
        Answer answer = new CaseRun(clues, wording).answer(limit, Level.RECORDED);
        return answer.verdict() == Verdict.OUTSIDE
                ? Optional.of(answer.verdict(Check.SENT, Level.RECORDED))
                : Optional.empty();
    }

    private Stream<Constraint> arrival(MessageEvidence message, Event event, String what) {
        Arrival arrival =
                Arrival.of(message.findings().envelope(), message.findings().delivered(), rules);
        return new Journey(message.findings().envelope(), arrival, rules, wording).arrivalClue(event, what).stream();
    }
}
