package org.tidegate.examination.picture;

/**
 * Dark marks on something lighter, thinner than a given size: rims, print, lines. By a morphological closing (Serra 1982, the "black top-hat";
 * from memory), so the darkness of a table beside the light thing does not matter.
 */
final class ThinDark {

    private static final float LEAST_LIGHT = 20;

    private ThinDark() {}

    /**
     * @param luma row-major, w × h
     * @param reach half of the thickness up to which something counts as thin, pixels
     * @return by which share each place is darker than what surrounds it, 0–1
     */
    static float[] of(float[] luma, int w, int h, int reach) {
        float[] closed = extreme(luma, w, h, reach, 1);
        closed = extreme(closed, w, h, reach, -1);
        for (int i = 0; i < closed.length; i++) {
            closed[i] = (closed[i] - luma[i]) / Math.max(LEAST_LIGHT, closed[i]);
        }
        return closed;
    }

    /** Every mark thicker by so many pixels on each side. */
    static float[] widened(float[] marks, int w, int h, int by) {
        return extreme(marks, w, h, by, 1);
    }

    /** Largest value (sign 1) or smallest (sign −1) of the square around each place. */
    private static float[] extreme(float[] values, int w, int h, int reach, int sign) {
        float[] rows = new float[values.length];
        float[] line = new float[Math.max(w, h)];
        SlidingMax max = new SlidingMax(line.length, reach);
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                line[x] = sign * values[y * w + x];
            }
            max.over(line, w);
            System.arraycopy(max.out(), 0, rows, y * w, w);
        }
        for (int x = 0; x < w; x++) {
            for (int y = 0; y < h; y++) {
                line[y] = rows[y * w + x];
            }
            max.over(line, h);
            for (int y = 0; y < h; y++) {
                rows[y * w + x] = sign * max.out()[y];
            }
        }
        return rows;
    }

    /** Running maximum by blocks (van Herk 1992; from memory): three comparisons a value at any reach. */
    private static final class SlidingMax {

        private final int reach;
        private final float[] fromLeft;
        private final float[] fromRight;
        private final float[] out;

        SlidingMax(int longest, int reach) {
            this.reach = reach;
            this.fromLeft = new float[longest];
            this.fromRight = new float[longest];
            this.out = new float[longest];
        }

        float[] out() {
            return out;
        }

        void over(float[] line, int n) {
            int block = 2 * reach + 1;
            for (int i = 0; i < n; i++) {
                fromLeft[i] = i % block == 0 ? line[i] : Math.max(fromLeft[i - 1], line[i]);
            }
            for (int i = n - 1; i >= 0; i--) {
                boolean ends = i == n - 1 || (i + 1) % block == 0;
                fromRight[i] = ends ? line[i] : Math.max(fromRight[i + 1], line[i]);
            }
            for (int i = 0; i < n; i++) {
                out[i] = Math.max(fromRight[Math.max(0, i - reach)], fromLeft[Math.min(n - 1, i + reach)]);
            }
        }
    }
}
