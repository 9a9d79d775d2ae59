package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidegate.booking.TestRecord;
import org.tidegate.finding.Clock;
import org.tidegate.finding.Event;
import org.tidegate.rules.TimingRules;

/** When the test began: the observer's record, else the slot, narrowed by the participant's words. */
final class TestClues {

    private static final Clock CLINIC = new Clock(Clock.Kind.CLINIC, "the clinic's clock");
    private static final Clock WORDS = new Clock(Clock.Kind.WORDS, "the participant's words");

    private final TestRecord test;
    private final TimingRules rules;
    private final Wording wording;

    TestClues(TestRecord test, TimingRules rules, Wording wording) {
        this.test = test;
        this.rules = rules;
        this.wording = wording;
    }

    Optional<Instant> timer() {
        return test.timerStart().map(t -> t.toInstant());
    }

    /** What a stated time is set against: ten minutes around the timer, else the slot with its margins. */
    StatedTime.ClinicRecord record() {
        Instant from = timer().map(t -> t.minus(rules.statedDiffers())).orElseGet(this::slotFrom);
        Instant to = timer().map(t -> t.plus(rules.statedDiffers())).orElseGet(this::slotTo);
        return new StatedTime.ClinicRecord() {
            @Override
            public boolean admits(Instant time) {
                return !time.isBefore(from) && !time.isAfter(to);
            }

            @Override
            public List<Instant> instants(LocalDateTime wall) {
                return TestClues.this.instants(wall);
            }
        };
    }

    List<Constraint> clues(List<StatedTime> stated) {
        List<Constraint> clues = new ArrayList<>();
        clues.add(timer().map(this::timerClue).orElseGet(this::slotClue));
        if (timer().isEmpty()) {
            stated.stream().filter(StatedTime::fits).map(this::statedClue).forEach(clues::add);
        }
        return clues;
    }

    /** {@code the participant wrote 08:31:00 (+01:00), but the observer started the timer at 08:02:00 (+01:00)}. */
    String misfit(StatedTime stated) {
        String record = timer().map(t -> "the observer started the timer at " + wording.time(t))
                .orElseGet(() -> "the slot with its margins is " + slotSpan());
        return stated.words(wording) + ", but " + record;
    }

    private String slotSpan() {
        return wording.time(slotFrom()) + " to " + wording.time(slotTo());
    }

    private Constraint timerClue(Instant timer) {
        Duration within = rules.timerWithin();
        return new Clues.Source(
                        CLINIC,
                        "book timer_start",
                        "the observer started the timer at " + wording.time(timer) + ", give or take "
                                + Wording.span(within),
                        List.of(Assumptions.TIMER),
                        rules.ownClock(),
                        Rank.RECORDED)
                .at(Event.TEST, timer.minus(within), timer.plus(within));
    }

    private Constraint slotClue() {
        return new Clues.Source(
                        CLINIC,
                        "book slot_start, slot_end",
                        "the test was made in its slot, which with its margins is " + slotSpan(),
                        List.of(Assumptions.TEST_IN_SLOT),
                        rules.ownClock(),
                        Rank.RECORDED)
                .at(Event.TEST, slotFrom(), slotTo());
    }

    private Constraint statedClue(StatedTime stated) {
        Duration within = rules.statedWithin();
        return new Clues.Source(
                        WORDS,
                        stated.source().place(),
                        stated.words(wording) + ", give or take " + Wording.span(within),
                        stated.leansOn(),
                        Duration.ZERO,
                        Rank.STATED)
                .at(Event.TEST, stated.time().minus(within), stated.time().plus(within));
    }

    private Instant slotFrom() {
        return test.appointment().slotStart().toInstant().minus(rules.slotBefore());
    }

    private Instant slotTo() {
        return test.appointment().slotEnd().toInstant().plus(rules.slotAfter());
    }

    /** Every instant that the clinic's clocks showed as {@code wall}: two in the hour that occurs twice; in the one that does not, the one meant. */
    private List<Instant> instants(LocalDateTime wall) {
        List<ZoneOffset> offsets = rules.zone().getRules().getValidOffsets(wall);
        return offsets.isEmpty()
                ? List.of(wall.atZone(rules.zone()).toInstant())
                : offsets.stream().map(wall::toInstant).toList();
    }
}
