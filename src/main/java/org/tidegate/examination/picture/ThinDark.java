package org.tidegate.examination.picture;

import java.util.Arrays;

/**
 * Dark marks on something lighter, thinner than a given size: rims, print, lines. By a morphological closing (Serra 1982, the "black top-hat";
 * from memory), so the darkness of a table beside the light thing does not matter.
 */
final class ThinDark {

    private static final float LEAST_LIGHT = 20;

    private ThinDark() {}

    /**
     * @param luma row-major, w × h, not negative
     * @param reach half of the thickness up to which something counts as thin, pixels
     * @return by which share each place is darker than what surrounds it, 0–1
     */
    static float[] of(float[] luma, int w, int h, int reach) {
        int[] widened = widest(bits(luma), w, h, reach);
        negate(widened);
        float[] closed = floats(widest(widened, w, h, reach), -1);
        for (int i = 0; i < closed.length; i++) {
            closed[i] = (closed[i] - luma[i]) / Math.max(LEAST_LIGHT, closed[i]);
        }
        return closed;
    }

    /** Every mark, none of them negative, thicker by so many pixels on each side. */
    static float[] widened(float[] marks, int w, int h, int by) {
        return floats(widest(bits(marks), w, h, by), 1);
    }

    /** What is not negative is ordered as its bits are (IEEE 754), and whole numbers are compared many at a time. */
    private static int[] bits(float[] values) {
        int[] bits = new int[values.length];
        for (int i = 0; i < bits.length; i++) {
            bits[i] = Float.floatToRawIntBits(values[i]);
        }
        return bits;
    }

    private static float[] floats(int[] bits, int sign) {
        float[] values = new float[bits.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = Float.intBitsToFloat(sign * bits[i]);
        }
        return values;
    }

    private static void negate(int[] values) {
        for (int i = 0; i < values.length; i++) {
            values[i] = -values[i];
        }
    }

    /** Largest value of the square around each place. */
    private static int[] widest(int[] values, int w, int h, int reach) {
        int[] padded = new int[(h + 2 * reach) * w];
        Arrays.fill(padded, 0, reach * w, Integer.MIN_VALUE);
        Arrays.fill(padded, (reach + h) * w, padded.length, Integer.MIN_VALUE);
        int[] line = new int[w + 2 * reach];
        for (int y = 0; y < h; y++) {
            Arrays.fill(line, Integer.MIN_VALUE);
            System.arraycopy(values, y * w, line, reach, w);
            largest(line, 1, 2 * reach + 1);
            System.arraycopy(line, 0, padded, (y + reach) * w, w);
        }
        largest(padded, w, 2 * reach + 1);
        return Arrays.copyOf(padded, w * h);
    }

    /**
     * Puts into each place the largest of so many values from there on, so far apart: of two, of four …, then of two such runs that overlap. Few
     * steps over long rows are quicker than one that decides at each place.
     */
    private static void largest(int[] values, int apart, int count) {
        int seen = 1;
        while (2 * seen <= count) {
            larger(values, seen * apart);
            seen *= 2;
        }
        if (seen < count) {
            larger(values, (count - seen) * apart);
        }
    }

    private static void larger(int[] values, int apart) {
        for (int i = 0; i < values.length - apart; i++) {
            values[i] = Math.max(values[i], values[i + apart]);
        }
    }
}
