package org.tidegate.examination.picture;

import java.util.List;

/**
 * Ridge logistic regression by Newton's method (iteratively reweighted least squares; common practice, from memory): the weights for which the
 * labels are likeliest, each but the first drawn towards 0.
 */
final class LogisticFit {

    /**
     * @param terms the first is 1
     * @param weight how much the sample counts
     */
    record Sample(double[] terms, boolean is, double weight) {}

    private static final int ROUNDS = 30;

    private final List<Sample> samples;
    private final double ridge;
    private final int n;

    private LogisticFit(List<Sample> samples, double ridge) {
        this.samples = samples;
        this.ridge = ridge;
        this.n = samples.get(0).terms().length;
    }

    /** @param ridge penalty on half the square of a weight */
    static double[] of(List<Sample> samples, double ridge) {
        LogisticFit fit = new LogisticFit(samples, ridge);
        double[] weights = new double[fit.n];
        for (int round = 0; round < ROUNDS; round++) {
            double[] step = fit.step(weights);
            for (int i = 0; i < weights.length; i++) {
                weights[i] += step[i];
            }
        }
        return weights;
    }

    private double[] step(double[] weights) {
        double[] gradient = new double[n];
        double[][] curvature = new double[n][n];
        for (int i = 1; i < n; i++) {
            gradient[i] = -ridge * weights[i];
            curvature[i][i] = ridge;
        }
        for (Sample s : samples) {
            double p = Logistic.probability(weights, s.terms);
            for (int i = 0; i < n; i++) {
                gradient[i] += s.weight * ((s.is ? 1 : 0) - p) * s.terms[i];
                for (int j = 0; j < n; j++) {
                    curvature[i][j] += s.weight * p * (1 - p) * s.terms[i] * s.terms[j];
                }
            }
        }
        return solved(curvature, gradient);
    }

    /** Gauss–Jordan elimination with the largest pivot of each column. */
    private static double[] solved(double[][] a, double[] b) {
        int n = b.length;
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int row = column + 1; row < n; row++) {
                pivot = Math.abs(a[row][column]) > Math.abs(a[pivot][column]) ? row : pivot;
            }
            double[] swapped = a[pivot];
            a[pivot] = a[column];
            a[column] = swapped;
            double other = b[pivot];
            b[pivot] = b[column];
            b[column] = other;
            for (int row = 0; row < n; row++) {
                if (row != column) {
                    double factor = a[row][column] / a[column][column];
                    for (int k = column; k < n; k++) {
                        a[row][k] -= factor * a[column][k];
                    }
                    b[row] -= factor * b[column];
                }
            }
        }
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = b[i] / a[i][i];
        }
        return x;
    }
}
