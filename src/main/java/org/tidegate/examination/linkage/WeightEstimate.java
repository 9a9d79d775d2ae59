package org.tidegate.examination.linkage;

/**
 * What estimation found.
 *
 * @param matches share of the pairs that are matches
 * @param m chance of each level of each field among matches, {@code m[field][level]}; a field's levels sum to 1
 * @param u the same among the other pairs
 * @param rounds how many rounds it took
 * @param logLikelihood natural logarithm of the likelihood of the patterns
 */
public record WeightEstimate(double matches, double[][] m, double[][] u, int rounds, double logLikelihood) {

    /** The probability that a pair with this pattern is a match. */
    public double probability(int... pattern) {
        double match = chance(matches, m, pattern);
        return match / (match + chance(1 - matches, u, pattern));
    }

    /** How likely the pattern is at all. */
    double likelihood(int[] pattern) {
        return chance(matches, m, pattern) + chance(1 - matches, u, pattern);
    }

    private static double chance(double share, double[][] levels, int[] pattern) {
        double chance = share;
        for (int f = 0; f < pattern.length; f++) {
            chance *= pattern[f] == AgreementPatterns.MISSING ? 1 : levels[f][pattern[f]];
        }
        return chance;
    }

    /** log2(m/u) of one level. */
    public double weight(int field, int level) {
        return Weights.log2(m[field][level] / u[field][level]);
    }
}
