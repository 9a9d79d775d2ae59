package org.tidegate.casework;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tidegate.booking.TestRecord;
import org.tidegate.examination.Assessment;
import org.tidegate.examination.timing.Arrival;
import org.tidegate.examination.timing.TimeJudgement.ClockTimes;
import org.tidegate.finding.Discrepancy;
import org.tidegate.finding.Findings;
import org.tidegate.finding.Severity;
import org.tidegate.rules.Protocol;
import org.tidegate.rules.Rules;
import org.tidegate.rules.ServiceHours;
import org.tidegate.rules.Wording;

/**
 * Until when what counts (DESIGN 10).
 *
 * @param arrived when the first message came
 * @param supplementBy until when a supplement still counts
 * @param windows the protocol's windows as clock times; empty without a match or a known kit
 */
record Deadlines(Instant arrived, Instant supplementBy, Optional<ClockTimes> windows) {

    /** @param taken when the first message was taken, for one that bears no arrival */
    static Deadlines of(Findings first, Instant taken, Assessment assessment, Optional<TestRecord> test, Rules rules) {
        Instant arrived = Arrival.of(first.envelope(), first.delivered(), rules.timing())
                .time()
                .orElse(taken);
        Duration supplement = test.flatMap(t -> rules.protocol(t.kit()))
                .map(Protocol::supplementWithin)
                .orElseGet(() -> shortestSupplement(rules));
        return new Deadlines(
                arrived, arrived.plus(supplement), assessment.time().map(t -> t.windows()));
    }

    /** Where the kit is not known the shortest of all counts, so that nobody is promised too much. */
    private static Duration shortestSupplement(Rules rules) {
        return rules.protocols().stream()
                .map(Protocol::supplementWithin)
                .min(Comparator.naturalOrder())
                .orElse(Duration.ZERO);
    }

    /** Until when a correction of this discrepancy still counts; empty where none is worded, so nothing can be done. */
    Optional<Instant> correctBy(Discrepancy d, Rules rules) {
        return wording(d, rules)
                .filter(w -> w.until().isPresent())
                .flatMap(w -> w.asksForNewPhoto() ? windows.map(ClockTimes::sendBy) : Optional.of(supplementBy));
    }

    /**
     * The last useful correction: the earliest moment at which one of those that can still be corrected is lost.
     *
     * @param after only corrections that still count after this moment
     */
    Optional<Instant> savable(List<Discrepancy> all, Rules rules, Instant after) {
        return all.stream()
                .filter(d -> d.severity() == Severity.HOLD)
                .flatMap(d -> correctBy(d, rules).stream())
                .filter(until -> until.isAfter(after))
                .min(Comparator.naturalOrder());
    }

    /** The earlier of the promised answer and the last useful correction less the reserve. */
    Instant due(Optional<Instant> savable, Rules rules) {
        Instant promised = arrived.plus(rules.service().replyPromise());
        return savable.map(s -> s.minus(rules.service().correctionReserve()))
                .filter(s -> s.isBefore(promised))
                .orElse(promised);
    }

    /** Until when an answer is promised; at night the promise counts from the morning on. */
    Instant answerBy(Rules rules) {
        return ServiceHours.of(rules.hours()).after(arrived, rules.service().replyPromise());
    }

    /**
     * Until when we wait for an answer: as long as a supplement counts, and never shorter than the letter says.
     *
     * @param asked until when the letter asks for something
     */
    Instant waitUntil(Optional<Instant> asked) {
        return asked.filter(supplementBy::isBefore).orElse(supplementBy);
    }

    static Optional<Wording> wording(Discrepancy d, Rules rules) {
        String first = rules.texts().languageFor("");
        return Optional.ofNullable(
                rules.texts().forLanguage(first).discrepancies().get(d.code()));
    }
}
