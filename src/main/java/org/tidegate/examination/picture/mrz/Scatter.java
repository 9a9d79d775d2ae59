package org.tidegate.examination.picture.mrz;

/** Means and the scatter of samples about them. */
final class Scatter {

    private Scatter() {}

    /** Sets the mean of the samples and adds their scatter about it to the lower triangle. */
    static void add(float[][] samples, double[] mean, double[][] within) {
        for (float[] sample : samples) {
            for (int i = 0; i < mean.length; i++) {
                mean[i] += sample[i] / (double) samples.length;
            }
        }
        double[] off = new double[mean.length];
        for (float[] sample : samples) {
            for (int i = 0; i < off.length; i++) {
                off[i] = sample[i] - mean[i];
            }
            for (int i = 0; i < off.length; i++) {
                for (int j = 0; j <= i; j++) {
                    within[i][j] += off[i] * off[j];
                }
            }
        }
    }

    /** The covariance with a share of its mean variance added to each variance, so that it can be inverted. */
    static double[][] ridged(double[][] within, double degrees, double share) {
        int n = within.length;
        double trace = 0;
        for (int i = 0; i < n; i++) {
            trace += within[i][i] / degrees;
        }
        double[][] out = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                out[i][j] = within[i][j] / degrees;
            }
            out[i][i] += share * trace / n;
        }
        return out;
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
