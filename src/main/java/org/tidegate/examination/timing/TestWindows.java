package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.timing.TimeJudgement.ClockTimes;
import org.tidegate.finding.Event;
import org.tidegate.rules.Protocol;
import org.tidegate.rules.TimingRules;

/**
 * Within what clock times the windows of a test lie of which nothing came yet.
 *
 * @param earliest where it began as early as it may have
 * @param latest where it began as late as it may have; the same where the observer's timer tells
 * @param timed whether the timer tells
 */
public record TestWindows(ClockTimes earliest, ClockTimes latest, boolean timed) {

    public static TestWindows of(TestRecord test, Protocol protocol, TimingRules rules) {
        Instant slotStart = test.appointment().slotStart().toInstant();
        Instant slotEnd = test.appointment().slotEnd().toInstant();
        Optional<Instant> timer = test.timerStart().map(t -> t.toInstant());
        Instant first = timer.orElse(slotStart.minus(rules.slotBefore()));
        Instant last = timer.orElse(slotEnd.plus(rules.slotAfter()));
        return new TestWindows(at(first, protocol, slotEnd), at(last, protocol, slotEnd), timer.isPresent());
    }

    /** The clock times of a test that began at {@code start}. */
    static ClockTimes at(Instant start, Protocol protocol, Instant slotEnd) {
        Question deadline = SentJudge.deadline(protocol, slotEnd, Event.ARRIVED);
        Instant from = deadline.earlier().equals(Event.EPOCH) ? Instant.EPOCH : start;
        return new ClockTimes(
                start.plus(protocol.readFrom()),
                start.plus(protocol.readUntil()),
                from.plus(Duration.ofMillis(deadline.most())));
    }
}
