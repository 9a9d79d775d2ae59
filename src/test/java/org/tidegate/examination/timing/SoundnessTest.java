package org.tidegate.examination.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.tidegate.examination.timing.PlayedMorning.Played;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.Verdict;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.rules.TimingRules;

/**
 * Soundness by simulation: no verdict contradicts the truth unless an assumption that it lists was violated; and not by abstaining.
 * {@code mvn -o -q -Pproof test -Dtest=SoundnessTest} plays 20,000 and prints the figures.
 */
class SoundnessTest {

    private static final int SUBMISSIONS = 20_000;

    /** An inside takes clocks at their word: it claims the window, its grace, and what clocks may be off without being wrong. */
    private static final double WORD = 1 + 2 + 0.2;

    private final TimeJudge judge = new TimeJudge(Scene.RULES.timing());

    @Test
    void noVerdictContradictsTheTruthUnlessAListedAssumptionWasViolated() {
        Random random = new Random(2026);
        int count = (int) (SUBMISSIONS * Share.OF_SIMULATIONS);
        List<String> contradictions = new ArrayList<>();
        SimulationFigures figures = new SimulationFigures();
        for (int n = 0; n < count; n++) {
            Played played = PlayedMorning.play(random, 2 + random.nextDouble() * 50, n % 2 == 0 ? 1 : 4);
            TimeJudgement j = judge.judge(played.submission());
            j.photo().ifPresent(v -> check(v, outsideOf(v, played.readAfter(), 20, 30), played, contradictions));
            check(j.sent(), outsideOf(j.sent(), played.arrivedAfter(), -9_999, 50), played, contradictions);
            contradictions.addAll(new DerivationChecker(played.submission()).faults(j.sent()));
            j.photo().ifPresent(v -> contradictions.addAll(new DerivationChecker(played.submission()).faults(v)));
            j.photo().ifPresent(figures::add);
            figures.add(j.sent());
        }
        System.out.println(figures.told("Soundness: " + count + " submissions, photos 2 to 52 min after the test, "
                + contradictions.size() + " contradict the truth"));
        assertThat(contradictions).isEmpty();
    }

    @Test
    void honestPeopleAreInsideAndGrossViolationsOutside() {
        Random random = new Random(2027);
        int count = (int) (SUBMISSIONS * Share.OF_SIMULATIONS);
        int honest = 0;
        int inside = 0;
        int gross = 0;
        int outside = 0;
        for (int n = 0; n < count; n++) {
            Played right = PlayedMorning.play(random, 22 + random.nextDouble() * 6, 0.5);
            if (right.nativeProgram() && right.exif()) {
                honest++;
                inside += verdict(right) == Verdict.INSIDE ? 1 : 0;
            }
            boolean late = random.nextBoolean();
            Played wrong =
                    PlayedMorning.play(random, late ? 40 + random.nextDouble() * 20 : random.nextDouble() * 10, 0.5);
            if (wrong.exif()) {
                gross++;
                outside += verdict(wrong) == Verdict.OUTSIDE ? 1 : 0;
            }
        }
        System.out.printf(
                "Honest senders with EXIF and a native program: %d of %d inside (%.1f %%); gross violations with EXIF: %d of %d outside (%.1f %%)%n",
                inside, honest, 100.0 * inside / honest, outside, gross, 100.0 * outside / gross);
        assertThat((double) inside / honest).isGreaterThanOrEqualTo(0.95);
        assertThat((double) outside / gross).isGreaterThanOrEqualTo(0.90);
    }

    /** How many of those who did everything in time wait for a person because of a time: whatever befell their phone or mail, or nothing. */
    @Test
    void fewHonestPeopleAreHeld() {
        Random random = new Random(2028);
        int count = (int) (SUBMISSIONS * Share.OF_SIMULATIONS);
        Map<String, Integer> people = new TreeMap<>();
        for (int n = 0; n < count; n++) {
            Played right = PlayedMorning.play(random, 22 + random.nextDouble() * 6, 1);
            if (right.arrivedAfter() < 45) {
                String who = right.honest() ? "nothing went wrong" : "clock, zone, server or habit went wrong";
                String kept = SimulationFigures.held(judge.judge(right.submission())) ? "held" : "not held";
                people.merge(who + ", " + kept, 1, Integer::sum);
            }
        }
        System.out.println("People who read and sent in time: " + people);
        double held = people.getOrDefault("nothing went wrong, held", 0);
        assertThat(held / (held + people.getOrDefault("nothing went wrong, not held", 0)))
                .isLessThan(0.02);
    }

    /** What each assumption is good for: how many decisions on photos fall away where the rules do not allow it. */
    @Test
    void eachAssumptionGainsDecisions() {
        int count = (int) (SUBMISSIONS / 5 * Share.OF_SIMULATIONS);
        int all = decisions(Scene.RULES.timing(), count);
        StringBuilder told = new StringBuilder("Of " + count + " photos " + all + " are decided; without");
        for (String name : Scene.RULES.timing().assumptions()) {
            int without = decisions(SimulationFigures.without(Scene.RULES.timing(), name), count);
            told.append(String.format(Locale.ROOT, "%n  %-22s %5d fewer", name, all - without));
            assertThat(without).as("decisions without %s", name).isLessThanOrEqualTo(all + count / 50);
        }
        System.out.println(told);
    }

    private static int decisions(TimingRules rules, int count) {
        TimeJudge under = new TimeJudge(rules);
        Random random = new Random(2029);
        int decided = 0;
        for (int n = 0; n < count; n++) {
            Played played = PlayedMorning.play(random, 2 + random.nextDouble() * 50, 1);
            Verdict verdict =
                    under.judge(played.submission()).photo().orElseThrow().verdict();
            decided += verdict == Verdict.UNDETERMINED ? 0 : 1;
        }
        return decided;
    }

    private Verdict verdict(Played played) {
        return judge.judge(played.submission()).photo().orElseThrow().verdict();
    }

    private static boolean outsideOf(WindowVerdict v, double minutes, double from, double to) {
        boolean inWindow = minutes >= from && minutes <= to;
        return switch (v.verdict()) {
            case INSIDE -> minutes < from - WORD || minutes > to + (v.check() == WindowVerdict.Check.SENT ? 0.2 : WORD);
            case OUTSIDE -> inWindow;
            case UNDETERMINED -> false;
        };
    }

    private static void check(WindowVerdict v, boolean wrong, Played played, List<String> contradictions) {
        Set<String> violated = played.violated();
        if (wrong && v.assumptions().stream().map(Assumption::name).noneMatch(violated::contains)) {
            contradictions.add(v.verdict() + " at " + played.readAfter() + "/" + played.arrivedAfter() + " leaning on "
                    + v.assumptions() + ", violated " + violated + ": " + v.derivation());
        }
    }
}
