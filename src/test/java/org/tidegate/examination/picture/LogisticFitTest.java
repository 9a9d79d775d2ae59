package org.tidegate.examination.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The weights that the finders' signs are given come from a fit that can be checked. */
class LogisticFitTest {

    private static final double[] HOURS = {
        0.5, 0.75, 1, 1.25, 1.5, 1.75, 1.75, 2, 2.25, 2.5, 2.75, 3, 3.25, 3.5, 4, 4.25, 4.5, 4.75, 5, 5.5
    };
    private static final String PASSED = "00000010101010111111";

    /** The much copied worked example of twenty students' hours of study and their passing: intercept −4.0777, slope 1.5046 (values from memory). */
    @Test
    void agreesWithAWorkedExample() {
        double[] weights = LogisticFit.of(samples(), 0);
        assertThat(weights[0]).isCloseTo(-4.0777, within(1e-4));
        assertThat(weights[1]).isCloseTo(1.5046, within(1e-4));
        assertThat(Logistic.probability(weights, new double[] {1, 2})).isCloseTo(0.26, within(0.005));
    }

    @Test
    void aPenaltyDrawsTheSlopeTowardsNothing() {
        double free = LogisticFit.of(samples(), 0)[1];
        assertThat(LogisticFit.of(samples(), 2)[1]).isBetween(0.0, free - 0.1);
    }

    private static List<LogisticFit.Sample> samples() {
        List<LogisticFit.Sample> samples = new ArrayList<>();
        for (int i = 0; i < HOURS.length; i++) {
            samples.add(new LogisticFit.Sample(new double[] {1, HOURS[i]}, PASSED.charAt(i) == '1', 1));
        }
        return samples;
    }
}
