package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidegate.examination.timing.Telling.Chain;
import org.tidegate.finding.Event;
import org.tidegate.finding.Level;
import org.tidegate.finding.Verdict;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.finding.WindowVerdict.Check;
import org.tidegate.finding.WindowVerdict.DerivationStep;
import org.tidegate.message.HeaderDate;
import org.tidegate.rules.Protocol;

/** Judges whether a message reached us in time: on recorded clocks, narrowed at most by the stated time. */
final class SentJudge {

    private final Instant slotEnd;
    private final Protocol protocol;
    private final List<Constraint> test;
    private final Wording wording;

    /** @param test clues about the test time */
    SentJudge(Instant slotEnd, Protocol protocol, List<Constraint> test, Wording wording) {
        this.slotEnd = slotEnd;
        this.protocol = protocol;
        this.test = test;
        this.wording = wording;
    }

    /** @see TimeJudgement */
    record Result(WindowVerdict verdict, boolean softened, boolean outage) {

        static Result of(WindowVerdict verdict) {
            return new Result(verdict, false, false);
        }
    }

    Result judge(Journey journey, Optional<HeaderDate> date, List<Outage> outages) {
        Question deadline = deadline(protocol, slotEnd, Event.ARRIVED);
        if (journey.arrived().isEmpty()) {
            return Result.of(Answer.undetermined(List.of(missing(deadline))).verdict(Check.SENT, Level.STATED));
        }
        List<Constraint> clues = new ArrayList<>(test);
        journey.arrivalClue().ifPresent(clues::add);
        CaseRun run = new CaseRun(clues, wording);
        for (Level level : List.of(Level.RECORDED, Level.STATED)) {
            Answer answer = run.answer(deadline, level);
            if (answer.verdict() == Verdict.OUTSIDE) {
                return late(answer, level, journey, date, outages);
            }
            if (answer.decided()) {
                return Result.of(answer.verdict(Check.SENT, level));
            }
        }
        return Result.of(run.known(deadline).verdict(Check.SENT, Level.STATED));
    }

    private static Chain missing(Question deadline) {
        String words =
                "No line of our own mail server tells at what time the message reached us, and no delivery time is known.";
        DerivationStep step =
                new DerivationStep(deadline.earlier(), deadline.later(), Duration.ZERO, Telling.MISSING, words);
        return new Chain(List.of(step), List.of());
    }

    /** The latest time that still counts: {@code submit_within} after what the protocol counts from. */
    static Question deadline(Protocol protocol, Instant slotEnd, Event event) {
        Duration within = protocol.submitWithin();
        return switch (protocol.submitFrom()) {
            case TEST -> Question.notLater(Check.SENT, Event.TEST, event, within);
            case READ_FROM ->
                Question.notLater(
                        Check.SENT, Event.TEST, event, protocol.readFrom().plus(within));
            case SLOT_END ->
                Question.notLater(
                        Check.SENT, Event.EPOCH, event, Duration.between(Instant.EPOCH, slotEnd.plus(within)));
        };
    }

    private Result late(Answer late, Level level, Journey journey, Optional<HeaderDate> date, List<Outage> outages) {
        List<Journey.Stamp> sent = journey.sendingStamps(date).stream()
                .filter(stamp -> mayBeInTime(stamp.time()))
                .toList();
        List<Chain> known = new ArrayList<>(late.chains());
        sent.stream().map(SentJudge::told).forEach(known::add);
        Optional<Outage> outage = outage(sent, journey.arrived(), outages);
        outage.map(this::told).ifPresent(known::add);
        WindowVerdict milder = Answer.undetermined(known).verdict(Check.SENT, level);
        if (outage.isPresent()) {
            return new Result(milder, false, true);
        }
        return sent.isEmpty() ? Result.of(late.verdict(Check.SENT, level)) : new Result(milder, true, false);
    }

    /** In which outage of ours the message came, or waited since other clocks have it sent. */
    private static Optional<Outage> outage(List<Journey.Stamp> sent, Optional<Instant> arrived, List<Outage> outages) {
        return arrived.flatMap(end -> {
            Instant start = sent.stream()
                    .map(Journey.Stamp::time)
                    .min(Instant::compareTo)
                    .orElse(end);
            return outages.stream().filter(o -> o.touches(start, end)).findFirst();
        });
    }

    private Chain told(Outage outage) {
        String words =
                "Our own mail was down from " + wording.time(outage.from()) + " to " + wording.time(outage.to()) + ".";
        Duration end = Duration.between(Instant.EPOCH, outage.to());
        return new Chain(
                List.of(new DerivationStep(Event.EPOCH, Event.ARRIVED, end, "outage register", words)), List.of());
    }

    private static Chain told(Journey.Stamp stamp) {
        Duration bound = Duration.between(Instant.EPOCH, stamp.time());
        DerivationStep step = new DerivationStep(
                Event.EPOCH, Event.SENT, bound, stamp.place(), Wording.sentence(stamp.words()) + ", before the limit.");
        return new Chain(List.of(step), List.of());
    }

    private boolean mayBeInTime(Instant sent) {
        Question deadline = deadline(protocol, slotEnd, Event.SENT);
        List<Constraint> clues = new ArrayList<>(test);
        clues.add(new Clues.Source(Clues.NATURE, "supposed", "supposed", List.of(), Duration.ZERO, Rank.RECORDED)
                .at(Event.SENT, sent, sent));
        return new CaseRun(clues, wording)
                .beliefs().stream()
                        .anyMatch(b -> b.word().least(deadline.earlier(), deadline.later()) <= deadline.most());
    }
}
