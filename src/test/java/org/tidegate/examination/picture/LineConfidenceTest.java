package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidegate.examination.picture.LineMeasure.Told;
import org.tidegate.finding.PictureFinding.Line;

class LineConfidenceTest {

    private static final double NOISE = 0.0025;

    @Test
    void growsWithStrengthAndFallsWithNoise() {
        double before = 0;
        for (double strength = 0; strength <= 1; strength += 0.01) {
            double now = LineConfidence.of(new Line(true, strength, NOISE));
            assertThat(now).isBetween(before, 1.0);
            before = now;
        }
        assertThat(LineConfidence.of(new Line(true, 0.1, 0.03)))
                .isLessThan(LineConfidence.of(new Line(true, 0.1, NOISE)));
    }

    /** No strength leaves doubt, in either direction: a faint line may be there, and never is one sure. */
    @Test
    void isNeverQuiteSure() {
        assertThat(LineConfidence.of(new Line(false, 0, 0))).isBetween(0.01, 0.2);
        assertThat(LineConfidence.of(new Line(true, 1, 0))).isLessThan(1);
    }

    @Test
    void whatIsMissedDependsOnTheNoise() {
        assertThat(LineConfidence.limit(new Line(false, 0, 0), LiveRules.read().pictures()))
                .isEqualTo(LiveRules.read().pictures().lineAt());
        assertThat(LineConfidence.limit(
                        new Line(false, 0, 0.1), LiveRules.read().pictures()))
                .isCloseTo(0.35, within(1e-9));
    }

    /** Two of ten are there where 0.2 is said, and so on: no error; Brier score of a perfectly calibrated forecast is the mean of p (1 − p). */
    @Test
    void aCalibratedForecastHasNoCalibrationError() {
        List<Told> told = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            told.add(new Told(i < 2 ? 0.1 : 0, true, 0.2));
            told.add(new Told(i < 7 ? 0.1 : 0, true, 0.7));
        }
        ReliabilityDiagram diagram = ReliabilityDiagram.of(told);
        assertThat(diagram.calibrationError()).isCloseTo(0, within(1e-9));
        assertThat(diagram.brier()).isCloseTo((0.2 * 0.8 + 0.7 * 0.3) / 2, within(1e-9));
        assertThat(diagram.image().getWidth()).isPositive();
    }
}
