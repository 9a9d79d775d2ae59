package org.tidegate.examination.picture;

/** Logistic regression: the probability that a weighted sum of terms speaks for. */
final class Logistic {

    private Logistic() {}

    /**
     * @param weights one for each term; the first term is 1
     * @return 0–1
     */
    static double probability(double[] weights, double[] terms) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * terms[i];
        }
        return 1 / (1 + Math.exp(-sum));
    }
}
