package org.tidegate.examination.picture;

/** Brightness of an evenly coloured surface in uneven light: a + b·u + c·v, u and v from 0 to 1, fitted while what stands out is left away. */
record Plane(double a, double b, double c) {

    private static final int ROUNDS = 4;
    private static final int BRIGHTEST = 255;

    /** Places of a row that are looked at. */
    private static final int ENOUGH = 100;

    double at(double u, double v) {
        return a + b * u + c * v;
    }

    /** The brightness at the middles of the pixels of a row, one of so many. */
    void row(int y, int rows, float[] out) {
        float step = (float) (b / out.length);
        float first = (float) (a + c * (y + 0.5) / rows) + step / 2;
        for (int x = 0; x < out.length; x++) {
            out[x] = first + step * x;
        }
    }

    static Plane fit(float[] values, int w, int h) {
        Plane plane = new Plane(Median.of(values, BRIGHTEST, BRIGHTEST), 0, 0);
        double near = 0.25;
        for (int round = 0; round < ROUNDS; round++) {
            plane = refit(plane, values, w, h, near);
            near = Math.max(0.05, near / 2);
        }
        return plane;
    }

    /** Least squares over the values within a relative distance of the plane so far. */
    private static Plane refit(Plane old, float[] values, int w, int h, double near) {
        double[] s = new double[9];
        int step = Math.max(2, w / ENOUGH);
        for (int y = 0; y < h; y += 2) {
            addRow(old, values, w, y, step, (y + 0.5) / h, near, s);
        }
        return s[0] < 0.1 * w * h / (2 * step) ? old : solve(s);
    }

    private static void addRow(Plane old, float[] values, int w, int y, int step, double v, double near, double[] s) {
        double level = old.a + old.c * v;
        int n = 0;
        double us = 0;
        double uus = 0;
        double zs = 0;
        double uzs = 0;
        for (int x = 0; x < w; x += step) {
            double u = (x + 0.5) / w;
            double z = values[y * w + x];
            double expected = level + old.b * u;
            if (Math.abs(z - expected) <= near * expected) {
                double fromMiddle = u - 0.5;
                n++;
                us += fromMiddle;
                uus += fromMiddle * fromMiddle;
                zs += z;
                uzs += fromMiddle * z;
            }
        }
        double down = v - 0.5;
        double[] row = {n, us, n * down, uus, us * down, n * down * down, zs, uzs, zs * down};
        for (int i = 0; i < s.length; i++) {
            s[i] += row[i];
        }
    }

    private static Plane solve(double[] s) {
        double mu = s[1] / s[0];
        double mv = s[2] / s[0];
        double mz = s[6] / s[0];
        double uu = s[3] / s[0] - mu * mu + 1e-9;
        double uv = s[4] / s[0] - mu * mv;
        double vv = s[5] / s[0] - mv * mv + 1e-9;
        double uz = s[7] / s[0] - mu * mz;
        double vz = s[8] / s[0] - mv * mz;
        double det = uu * vv - uv * uv;
        double b = (uz * vv - vz * uv) / det;
        double c = (vz * uu - uz * uv) / det;
        double a = mz - b * mu - c * mv;
        return new Plane(a - 0.5 * b - 0.5 * c, b, c);
    }
}
