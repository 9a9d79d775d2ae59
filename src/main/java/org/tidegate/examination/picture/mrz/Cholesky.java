package org.tidegate.examination.picture.mrz;

/** Solves linear equations with a positive definite matrix, of which the lower triangle is read. */
final class Cholesky {

    private Cholesky() {}

    /** The lower factor. */
    static double[][] of(double[][] matrix) {
        int n = matrix.length;
        double[][] l = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= l[i][k] * l[j][k];
                }
                l[i][j] = i == j ? Math.sqrt(sum) : sum / l[j][j];
            }
        }
        return l;
    }

    static double[] solve(double[][] factor, double[] right) {
        int n = right.length;
        double[] x = right.clone();
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < i; k++) {
                x[i] -= factor[i][k] * x[k];
            }
            x[i] /= factor[i][i];
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int k = i + 1; k < n; k++) {
                x[i] -= factor[k][i] * x[k];
            }
            x[i] /= factor[i][i];
        }
        return x;
    }

    /** xᵀ M⁻¹ x for the matrix M of that factor. */
    static double square(double[][] factor, float[] x) {
        double[] z = new double[x.length];
        double sum = 0;
        for (int i = 0; i < z.length; i++) {
            double v = x[i];
            double[] row = factor[i];
            for (int k = 0; k < i; k++) {
                v -= row[k] * z[k];
            }
            z[i] = v / row[i];
            sum += z[i] * z[i];
        }
        return sum;
    }
}
