package org.tidegate.examination.picture;

import org.tidegate.examination.picture.Regions.Region;

/**
 * A block seen as made of two colours (k-means with two centres, begun from its darkest and its lightest pixel).
 *
 * @param unexplained share of the variance that is left, 0–1
 */
record TwoColours(double unexplained) {

    private static final int ROUNDS = 6;

    /** So many pixels of a block tell its colours. */
    private static final double ENOUGH = 1_600;

    static TwoColours of(Region r, Pixels surface) {
        int step = (int) Math.ceil(Math.sqrt((double) r.width() * r.height() / ENOUGH));
        int w = (r.width() + step - 1) / step;
        int n = w * ((r.height() + step - 1) / step);
        double[][] values = new double[n][3];
        double[] mean = new double[3];
        int dark = 0;
        int light = 0;
        for (int i = 0; i < n; i++) {
            int rgb = surface.rgb()[(r.top() + i / w * step) * surface.width() + r.left() + i % w * step];
            for (int c = 0; c < 3; c++) {
                values[i][c] = (rgb >> 8 * c) & 255;
                mean[c] += values[i][c] / n;
            }
            dark = sum(values[i]) < sum(values[dark]) ? i : dark;
            light = sum(values[i]) > sum(values[light]) ? i : light;
        }
        double[][] centres = {values[dark].clone(), values[light].clone()};
        double left = 0;
        for (int round = 0; round < ROUNDS; round++) {
            left = moved(centres, values);
        }
        double all = 0;
        for (double[] v : values) {
            all += distance(v, mean);
        }
        return new TwoColours(all == 0 ? 0 : left / all);
    }

    /** One round: each centre goes to the mean of the values nearest to it. @return what was left before it */
    private static double moved(double[][] centres, double[][] values) {
        double[][] sums = new double[2][3];
        int[] counts = new int[2];
        double left = 0;
        for (double[] v : values) {
            double first = distance(v, centres[0]);
            double second = distance(v, centres[1]);
            int nearer = first <= second ? 0 : 1;
            left += Math.min(first, second);
            counts[nearer]++;
            for (int c = 0; c < 3; c++) {
                sums[nearer][c] += v[c];
            }
        }
        for (int k = 0; k < 2; k++) {
            for (int c = 0; c < 3 && counts[k] > 0; c++) {
                centres[k][c] = sums[k][c] / counts[k];
            }
        }
        return left;
    }

    private static double sum(double[] v) {
        return v[0] + v[1] + v[2];
    }

    private static double distance(double[] p, double[] q) {
        double sum = 0;
        for (int c = 0; c < 3; c++) {
            sum += (p[c] - q[c]) * (p[c] - q[c]);
        }
        return sum;
    }
}
