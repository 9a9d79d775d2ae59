package org.tidegate.examination.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tidegate.examination.timing.Scene.exif;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.finding.WindowVerdict.DerivationStep;

/** The checker itself: a proof that claims a second too much is caught, whichever step claims it. */
class DerivationCheckerTest {

    private final TimeCase submission = Scene.timer("07:00:00+01:00")
            .program("Kestrel Mail 8.2 (K5; phone)")
            .date("07:26:00", "+01:00")
            .arrived("07:26:10+01:00")
            .photo("Kestrel", "K5", exif("07:25:00"))
            .build();

    @Test
    void catchesEveryStepThatClaimsTooMuch() {
        WindowVerdict verdict =
                new TimeJudge(Scene.RULES.timing()).judge(submission).photo().orElseThrow();
        DerivationChecker checker = new DerivationChecker(submission);
        assertThat(checker.faults(verdict)).isEmpty();
        for (int i = 0; i < verdict.derivation().size(); i++) {
            assertThat(checker.faults(tampered(verdict, i))).as("step %d", i).isNotEmpty();
        }
    }

    private static WindowVerdict tampered(WindowVerdict v, int index) {
        List<DerivationStep> steps = new ArrayList<>(v.derivation());
        DerivationStep s = steps.get(index);
        steps.set(
                index,
                new DerivationStep(s.from(), s.to(), s.bound().minus(Duration.ofSeconds(1)), s.clue(), s.words()));
        return new WindowVerdict(v.check(), v.verdict(), v.level(), v.assumptions(), v.margin(), steps);
    }
}
