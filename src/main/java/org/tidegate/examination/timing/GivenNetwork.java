package org.tidegate.examination.timing;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.tidegate.finding.Clock;
import org.tidegate.finding.Clue;
import org.tidegate.finding.Event;
import org.tidegate.finding.Level;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.finding.WindowVerdict.Check;

/** Judges windows on clues given by hand: the solver alone, without any mail. */
public final class GivenNetwork {

    private final CaseRun run;

    /** @param zone in which derivations tell times */
    public GivenNetwork(List<GivenClue> clues, ZoneId zone) {
        this.run = new CaseRun(
                clues.stream().map(GivenClue::constraint).toList(),
                new Wording(zone, LocalDate.ofInstant(Instant.EPOCH, ZoneOffset.UTC)));
    }

    /** @param tolerance by which the clue's clock may be off without being wrong */
    public record GivenClue(Clue clue, Duration tolerance) {

        private Constraint constraint() {
            return new Constraint(clue, tolerance.toMillis(), rank());
        }

        private Rank rank() {
            return switch (clue.clock().level()) {
                case RECORDED -> clue.clock().equals(Clues.NATURE) ? Rank.ORDER : Rank.RECORDED;
                case NETWORK -> Rank.NETWORK;
                case DEVICE -> deviceRank();
                case STATED -> Rank.STATED;
            };
        }

        private Rank deviceRank() {
            if (clue.leansOn().contains(Assumptions.FRESH_FIX)) {
                return Rank.FRESH_FIX;
            }
            if (clue.clock().kind() == Clock.Kind.SATELLITE) {
                return Rank.FIX;
            }
            boolean ofTheClock =
                    clue.earlier().equals(Event.EPOCH) || clue.leansOn().contains(Assumptions.HANDED_OVER);
            return ofTheClock ? Rank.DEVICE_CLOCK : Rank.SAME_DEVICE;
        }
    }

    /** @param grace by which both edges are widened */
    public record GivenWindow(Check check, Event earlier, Event later, Duration from, Duration until, Duration grace) {

        private Question question() {
            return Question.between(check, earlier, later, from, until, grace);
        }
    }

    /** The order of things: {@code later} is not before {@code earlier}. */
    public static GivenClue order(Event earlier, Event later) {
        return new GivenClue(Clues.order(earlier, later).clue(), Duration.ZERO);
    }

    /** The verdict at the first level that decides; undetermined, with what is known, where none does. */
    public WindowVerdict judge(GivenWindow window) {
        for (Level level : Level.values()) {
            Answer answer = run.answer(window.question(), level);
            if (answer.decided()) {
                return answer.verdict(window.check(), level);
            }
        }
        return run.known(window.question()).verdict(window.check(), Level.STATED);
    }

    /** Clues that no belief lets stand together with the more trusted ones, as places in the evidence. */
    public List<String> setAside() {
        return run.beliefs().stream()
                .flatMap(b -> b.contradictions().stream())
                .map(c -> c.setAside().clue().place())
                .distinct()
                .toList();
    }
}
