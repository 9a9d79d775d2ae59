package org.tidegate.examination.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ExpectationMaximisationTest {

    /**
     * Two latent classes over four yes/no items: the role-conflict data of Stouffer and Toby (1951), 216 persons, with the
     * maximum-likelihood estimates of Goodman (Biometrika 61, 1974). Counts and estimates from memory; the counts sum to 216.
     */
    @Test
    void findsGoodmansEstimates() {
        long[] counts = {42, 23, 6, 25, 6, 24, 7, 38, 1, 4, 1, 6, 2, 9, 2, 20};
        AgreementPatterns patterns = new AgreementPatterns(2, 2, 2, 2);
        for (int i = 0; i < counts.length; i++) {
            patterns.add(counts[i], i >> 3 & 1, i >> 2 & 1, i >> 1 & 1, i & 1);
        }
        WeightEstimate got = ExpectationMaximisation.estimate(patterns, guess(4, 0.5, 0.8, 0.3));
        assertThat(got.matches()).isCloseTo(0.279, within(0.002));
        assertThat(got.logLikelihood()).isCloseTo(-504.468, within(0.001));
        double[] m = {0.993, 0.940, 0.927, 0.769};
        double[] u = {0.714, 0.330, 0.354, 0.132};
        for (int f = 0; f < 4; f++) {
            assertThat(got.m()[f][0]).as("m of item " + f).isCloseTo(m[f], within(0.003));
            assertThat(got.u()[f][0]).as("u of item " + f).isCloseTo(u[f], within(0.003));
        }
    }

    /** Patterns in exactly the shares that known m and u give: three fields determine them, so they must come back. */
    @Test
    void findsTheWeightsThatMadeThePatterns() {
        double[] m = {0.95, 0.90, 0.85};
        double[] u = {0.02, 0.05, 0.30};
        double matches = 0.1;
        AgreementPatterns patterns = new AgreementPatterns(2, 2, 2);
        for (int i = 0; i < 8; i++) {
            double match = matches;
            double other = 1 - matches;
            for (int f = 0; f < 3; f++) {
                boolean agrees = (i >> f & 1) == 0;
                match *= agrees ? m[f] : 1 - m[f];
                other *= agrees ? u[f] : 1 - u[f];
            }
            patterns.add(Math.round((match + other) * 1e9), i & 1, i >> 1 & 1, i >> 2 & 1);
        }
        WeightEstimate got = ExpectationMaximisation.estimate(patterns, guess(3, 0.3, 0.7, 0.2));
        assertThat(got.matches()).isCloseTo(matches, within(1e-4));
        for (int f = 0; f < 3; f++) {
            assertThat(got.m()[f][0]).as("m of field " + f).isCloseTo(m[f], within(1e-3));
            assertThat(got.u()[f][0]).as("u of field " + f).isCloseTo(u[f], within(1e-3));
        }
    }

    @Test
    void aMissingFieldSaysNothing() {
        AgreementPatterns patterns = new AgreementPatterns(2, 2);
        patterns.add(10, 0, AgreementPatterns.MISSING);
        patterns.add(90, 1, AgreementPatterns.MISSING);
        WeightEstimate got = ExpectationMaximisation.estimate(patterns, guess(2, 0.3, 0.7, 0.2));
        assertThat(got.m()[1][0]).isEqualTo(0.5);
        assertThat(got.probability(AgreementPatterns.MISSING, AgreementPatterns.MISSING))
                .isCloseTo(got.matches(), within(1e-12));
    }

    @Test
    void refusesAPatternThatDoesNotFit() {
        AgreementPatterns patterns = new AgreementPatterns(2, 3);
        assertThatThrownBy(() -> patterns.add(1, 0)).hasMessage("1 levels for 2 fields");
        assertThatThrownBy(() -> patterns.add(1, 2, 0)).hasMessage("Field 0 has no level 2");
    }

    private static WeightEstimate guess(int fields, double matches, double m, double u) {
        double[][] ms = new double[fields][];
        double[][] us = new double[fields][];
        for (int f = 0; f < fields; f++) {
            ms[f] = new double[] {m, 1 - m};
            us[f] = new double[] {u, 1 - u};
        }
        return new WeightEstimate(matches, ms, us, 0, 0);
    }
}
