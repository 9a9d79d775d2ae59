package org.tidegate.examination.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tidegate.finding.Event;
import org.tidegate.finding.Level;
import org.tidegate.finding.Verdict;
import org.tidegate.finding.WindowVerdict.Check;

/** With assumptions and set-aside clues fixed, removing a clue never creates or reverses a decision. */
class FewerCluesTest {

    static final Wording WORDING = new Wording(ZoneOffset.UTC, LocalDate.of(1970, 1, 1));
    private static final Question WINDOW = Question.between(
            Check.PHOTO,
            Event.TEST,
            Event.photo(0),
            Duration.ofMinutes(20),
            Duration.ofMinutes(30),
            Duration.ofMinutes(1));

    @Test
    void neverCreateOrReverseADecision() {
        Random random = new Random(6);
        int decided = 0;
        for (int n = 0; n < 20_000 * Share.OF_SIMULATIONS; n++) {
            Belief belief = new CaseRun(draw(random, 12), WORDING).beliefs().get(0);
            Verdict whole = Answer.of(WINDOW, belief, WORDING).verdict();
            decided += whole == Verdict.UNDETERMINED ? 0 : 1;
            for (Belief.Fit gone : belief.fits()) {
                Verdict fewer = without(belief, gone);
                assertThat(fewer).as("network %d without %s", n, gone).isIn(whole, Verdict.UNDETERMINED);
            }
        }
        assertThat(decided).as("networks that decide something").isPositive();
    }

    /** At word the clues stand as they were stretched; both networks anew, without one clue. */
    private static Verdict without(Belief belief, Belief.Fit gone) {
        List<Constraint> word = new ArrayList<>();
        List<Constraint> tolerant = new ArrayList<>();
        for (Belief.Fit fit : belief.fits()) {
            if (fit != gone) {
                long slack = fit.constraint().tolerance();
                word.add(fixed(fit.constraint(), fit.least(), fit.most()));
                tolerant.add(fixed(
                        fit.constraint(),
                        fit.constraint().least() - slack,
                        fit.constraint().most() + slack));
            }
        }
        Verdict inside = verdict(word);
        Verdict outside = verdict(tolerant);
        return inside == Verdict.INSIDE ? inside : outside == Verdict.OUTSIDE ? outside : Verdict.UNDETERMINED;
    }

    private static Constraint fixed(Constraint c, long least, long most) {
        return new Clues.Source(c.clue().clock(), c.clue().place(), "clue", List.of(), Duration.ZERO, Rank.RECORDED)
                .between(c.clue().earlier(), c.clue().later(), millis(least), millis(most));
    }

    private static Optional<Duration> millis(long millis) {
        return Math.abs(millis) > Network.FREE / 2 ? Optional.empty() : Optional.of(Duration.ofMillis(millis));
    }

    static List<Constraint> draw(Random random, int count) {
        List<Event> events =
                List.of(Event.EPOCH, Event.TEST, Event.photo(0), Event.SENT, Event.ARRIVED, Event.DEVICE_ZERO);
        long[] truth = {0, 0, 1_500_000 + random.nextInt(900_000) - 450_000, 1_800_000, 1_900_000, 0};
        List<Constraint> clues = new ArrayList<>();
        for (int c = 0; c < count; c++) {
            int a = random.nextInt(events.size());
            int b = (a + 1 + random.nextInt(events.size() - 1)) % events.size();
            long middle = truth[b] - truth[a] + (random.nextInt(6) == 0 ? random.nextInt(3_000_000) - 1_500_000 : 0);
            clues.add(new Clues.Source(
                            Clues.NATURE,
                            "clue " + c,
                            "clue",
                            List.of(),
                            Duration.ofSeconds(random.nextInt(120)),
                            rank(random))
                    .between(events.get(a), events.get(b), bound(random, middle, -1), bound(random, middle, 1)));
        }
        return clues;
    }

    private static Rank rank(Random random) {
        return Rank.values()[random.nextInt(Rank.values().length)];
    }

    private static Optional<Duration> bound(Random random, long middle, int side) {
        return random.nextInt(5) == 0
                ? Optional.empty()
                : Optional.of(Duration.ofMillis(middle + side * (long) random.nextInt(200_000)));
    }

    private static Verdict verdict(List<Constraint> clues) {
        return new CaseRun(clues, WORDING).answer(WINDOW, Level.STATED).verdict();
    }
}
