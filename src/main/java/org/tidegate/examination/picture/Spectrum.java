package org.tidegate.examination.picture;

import java.util.Arrays;

/**
 * Low cosine frequencies of a 64 × 64 grid, without the constant, and the bits that they give: 256 of the lowest 16 × 16, each above or below
 * their median (the method published as "PDQ" in The TMK+PDQF Video-Hashing Algorithm and the PDQ Image-Hashing Algorithm, 2019, chapter
 * 4), and 256 of twice as fine frequencies and more. There a shared table and a cassette of one kind, laid down again by hand, have lost their
 * step with each other, print differs, and compression has not yet come.
 */
final class Spectrum {

    static final int SIDE = 64;

    /** Bits of either half. */
    static final int BITS = 256;

    private static final int COARSE = 16;

    /** Finer bits are taken evenly from the frequencies between these two, along either axis. */
    private static final int FINE_FROM = 30;

    private static final int ALL = 38;
    private static final int FINE = ALL * ALL - FINE_FROM * FINE_FROM;
    private static final float[][] COSINES = cosines();

    private final float[][] at;

    private Spectrum(float[][] at) {
        this.at = at;
    }

    static Spectrum of(float[][] grid) {
        float[][] half = new float[ALL][SIDE];
        float[][] out = new float[ALL][ALL];
        for (int i = 0; i < ALL; i++) {
            for (int y = 0; y < SIDE; y++) {
                for (int x = 0; x < SIDE; x++) {
                    half[i][x] += COSINES[i][y] * grid[y][x];
                }
            }
            for (int j = 0; j < ALL; j++) {
                for (int x = 0; x < SIDE; x++) {
                    out[i][j] += half[i][x] * COSINES[j][x];
                }
            }
        }
        return new Spectrum(out);
    }

    /** One of the eight quarter turns and mirror images, 0 as it stands: a mirrored picture has its odd frequencies negated. */
    Spectrum varied(int variant) {
        float[][] out = new float[ALL][ALL];
        for (int i = 0; i < ALL; i++) {
            for (int j = 0; j < ALL; j++) {
                float value = (variant & 4) == 0 ? at[i][j] : at[j][i];
                boolean negated = ((variant & 1) != 0 && j % 2 == 0) ^ ((variant & 2) != 0 && i % 2 == 0);
                out[i][j] = negated ? -value : value;
            }
        }
        return new Spectrum(out);
    }

    /** Eight words: four of the coarse bits, four of the finer ones; bit k is bit k mod 64 of word k / 64. */
    long[] bits() {
        float[] coarse = new float[BITS];
        float[] fine = new float[BITS];
        int met = 0;
        for (int i = 0; i < ALL; i++) {
            for (int j = 0; j < ALL; j++) {
                if (i < COARSE && j < COARSE) {
                    coarse[i * COARSE + j] = at[i][j];
                } else if (i >= FINE_FROM || j >= FINE_FROM) {
                    // There are two or three frequencies for a bit; the last of them stays.
                    fine[met++ * BITS / FINE] = at[i][j];
                }
            }
        }
        long[] bits = new long[2 * BITS / 64];
        set(bits, 0, coarse);
        set(bits, BITS / 64, fine);
        return bits;
    }

    private static void set(long[] bits, int word, float[] values) {
        float[] sorted = values.clone();
        Arrays.sort(sorted);
        float median = sorted[BITS / 2 - 1];
        for (int k = 0; k < BITS; k++) {
            if (values[k] > median) {
                bits[word + k / 64] |= 1L << (k % 64);
            }
        }
    }

    /** DCT-II without the constant term. */
    private static float[][] cosines() {
        float[][] c = new float[ALL][SIDE];
        for (int i = 0; i < ALL; i++) {
            for (int j = 0; j < SIDE; j++) {
                c[i][j] = (float) (Math.sqrt(2.0 / SIDE) * Math.cos(Math.PI / 2 / SIDE * (i + 1) * (2 * j + 1)));
            }
        }
        return c;
    }
}
