package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.booking.TestRecord;
import org.tidegate.finding.Event;
import org.tidegate.finding.Level;
import org.tidegate.finding.Verdict;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.finding.WindowVerdict.Check;
import org.tidegate.message.HeaderDate;
import org.tidegate.rules.Protocol;

/** Judges whether the message with the cassette reached us in time. */
final class SentJudge {

    private final TestRecord test;
    private final Protocol protocol;

    SentJudge(TestRecord test, Protocol protocol) {
        this.test = test;
        this.protocol = protocol;
    }

    record Result(WindowVerdict verdict, boolean softened, boolean outage) {}

    Result judge(
            List<Constraint> testClues,
            Journey journey,
            Optional<HeaderDate> date,
            Arrival arrival,
            List<Outage> outages) {
        List<Constraint> clues = new ArrayList<>(testClues);
        journey.arrivalClue().ifPresent(clues::add);
        CaseRun run = new CaseRun(clues);
        for (Level level : List.of(Level.RECORDED, Level.STATED)) {
            Answer answer = run.answer(deadline(Event.ARRIVED), level);
            if (answer.verdict() == Verdict.OUTSIDE) {
                return late(answer, level, testClues, journey, date, arrival, outages);
            }
            if (answer.decided()) {
                return new Result(answer.verdict(Check.SENT, level), false, false);
            }
        }
        return new Result(Answer.undetermined().verdict(Check.SENT, Level.STATED), false, false);
    }

    /** The latest sending that still counts: {@code submit_within} after what the protocol counts from. */
    Question deadline(Event event) {
        Duration within = protocol.submitWithin();
        return switch (protocol.submitFrom()) {
            case TEST -> Question.notLater(Check.SENT, Event.TEST, event, within);
            case READ_FROM ->
                Question.notLater(
                        Check.SENT, Event.TEST, event, protocol.readFrom().plus(within));
            case SLOT_END -> {
                Instant end = test.appointment().slotEnd().toInstant().plus(within);
                yield Question.notLater(Check.SENT, Event.EPOCH, event, Duration.between(Instant.EPOCH, end));
            }
        };
    }

    private Result late(
            Answer late,
            Level level,
            List<Constraint> testClues,
            Journey journey,
            Optional<HeaderDate> date,
            Arrival arrival,
            List<Outage> outages) {
        List<Instant> sentBy = sentBefore(testClues, journey, date);
        boolean outage = arrival.time().isPresent()
                && outages.stream()
                        .anyMatch(o -> explains(o, sentBy, arrival.time().get()));
        boolean softened = !outage && !sentBy.isEmpty();
        WindowVerdict verdict =
                outage || softened ? Answer.undetermined().verdict(Check.SENT, level) : late.verdict(Check.SENT, level);
        return new Result(verdict, softened, outage);
    }

    /** An outage of ours explains lateness where it lasted when the message came, or when other servers or the phone had sent it. */
    private static boolean explains(Outage outage, List<Instant> sentBy, Instant arrived) {
        Instant start = sentBy.stream().min(Instant::compareTo).orElse(arrived);
        return outage.touches(start, arrived);
    }

    /** Times before the deadline at which an earlier hop or the sender's clock has the message sent. */
    private List<Instant> sentBefore(List<Constraint> testClues, Journey journey, Optional<HeaderDate> date) {
        Stream<Instant> hops = journey.allHops().stream().map(c -> Instant.EPOCH.plusMillis(c.least()));
        return Stream.concat(hops, date.filter(d -> d.offset().isPresent()).map(HeaderDate::instant).stream())
                .filter(time -> mayBeInTime(testClues, time))
                .toList();
    }

    private boolean mayBeInTime(List<Constraint> testClues, Instant sent) {
        Question deadline = deadline(Event.SENT);
        List<Constraint> clues = new ArrayList<>(testClues);
        clues.add(SupposedTime.of(Event.SENT, sent));
        for (Belief belief : new CaseRun(clues).beliefs()) {
            if (belief.word().least(deadline.earlier(), deadline.later()) <= deadline.most()) {
                return true;
            }
        }
        return false;
    }
}
