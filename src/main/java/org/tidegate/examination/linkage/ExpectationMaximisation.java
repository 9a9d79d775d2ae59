package org.tidegate.examination.linkage;

import java.util.Arrays;
import java.util.List;
import org.tidegate.examination.linkage.AgreementPatterns.Counted;

/**
 * Estimates m, u and the share of matches from unlabelled pairs (Dempster, Laird, Rubin 1977; for record linkage Winkler 1988):
 * fields are taken as independent within matches and within the others.
 */
public final class ExpectationMaximisation {

    private static final int MOST_ROUNDS = 500;
    private static final double SMALL_CHANGE = 1e-9;

    /** Added to every level's count, so that a level never seen keeps a finite weight. */
    private static final double PRIOR_COUNT = 0.01;

    private final AgreementPatterns patterns;
    private final List<Counted> counted;
    private final boolean keepU;

    private ExpectationMaximisation(AgreementPatterns patterns, boolean keepU) {
        this.patterns = patterns;
        this.counted = patterns.counted();
        this.keepU = keepU;
    }

    /** From a first guess, letting everything move. */
    public static WeightEstimate estimate(AgreementPatterns patterns, WeightEstimate guess) {
        return new ExpectationMaximisation(patterns, false).run(guess);
    }

    /** Keeps the guess's u, as where it was counted over random pairs. */
    public static WeightEstimate estimateM(AgreementPatterns patterns, WeightEstimate guess) {
        return new ExpectationMaximisation(patterns, true).run(guess);
    }

    private WeightEstimate run(WeightEstimate guess) {
        WeightEstimate now = guess;
        for (int round = 1; round <= MOST_ROUNDS; round++) {
            WeightEstimate next = round(now, round);
            double change = Math.abs(next.logLikelihood() - now.logLikelihood());
            boolean settled = round > 1 && change <= SMALL_CHANGE * Math.abs(next.logLikelihood());
            now = next;
            if (settled) {
                break;
            }
        }
        return now;
    }

    /** One expectation and one maximisation; the likelihood is that of the estimate that came in. */
    private WeightEstimate round(WeightEstimate now, int round) {
        double[][] m = empty();
        double[][] u = empty();
        double matches = 0;
        double all = 0;
        double logLikelihood = 0;
        for (Counted c : counted) {
            double p = now.probability(c.pattern());
            matches += p * c.count();
            all += c.count();
            logLikelihood += c.count() * Math.log(now.likelihood(c.pattern()));
            count(m, c.pattern(), p * c.count());
            count(u, c.pattern(), (1 - p) * c.count());
        }
        return new WeightEstimate(matches / all, shares(m), keepU ? now.u() : shares(u), round, logLikelihood);
    }

    private double[][] empty() {
        double[][] counts = new double[patterns.fields()][];
        for (int f = 0; f < counts.length; f++) {
            counts[f] = new double[patterns.levels(f)];
            Arrays.fill(counts[f], PRIOR_COUNT);
        }
        return counts;
    }

    private static void count(double[][] counts, int[] pattern, double weight) {
        for (int f = 0; f < pattern.length; f++) {
            if (pattern[f] != AgreementPatterns.MISSING) {
                counts[f][pattern[f]] += weight;
            }
        }
    }

    private static double[][] shares(double[][] counts) {
        for (double[] field : counts) {
            double sum = 0;
            for (double c : field) {
                sum += c;
            }
            for (int l = 0; l < field.length; l++) {
                field[l] /= sum;
            }
        }
        return counts;
    }
}
