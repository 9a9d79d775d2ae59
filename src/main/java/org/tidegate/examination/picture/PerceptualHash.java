package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A 256-bit hash of what a picture looks like: 16 × 16 low cosine frequencies of the picture averaged to 64 × 64, each above or below their
 * median. Own implementation of the method published as "PDQ" (The TMK+PDQF Video-Hashing Algorithm and the PDQ Image-Hashing Algorithm,
 * 2019, chapter 4), whose published values check it.
 */
final class PerceptualHash {

    static final int BITS = 256;

    private static final int SIDE = 64;
    private static final int FREQUENCIES = 16;
    private static final float[][] COSINES = cosines();

    private final float[][] spectrum;
    private final int quality;

    private PerceptualHash(float[][] spectrum, int quality) {
        this.spectrum = spectrum;
        this.quality = quality;
    }

    static PerceptualHash of(Luma luma) {
        float[][] small = decimate(smooth(smooth(luma)));
        return new PerceptualHash(transform(small), quality(small));
    }

    /** 0–100: how much there is to see. A featureless picture's hash means nothing. */
    int quality() {
        return quality;
    }

    /** The picture as it stands; bit k is bit k mod 64 of word k / 64. */
    long[] upright() {
        return bits(spectrum);
    }

    /** The seven others among its quarter turns and mirror images. A mirrored picture has its odd frequencies negated. */
    List<long[]> turnedAndMirrored() {
        List<long[]> all = new ArrayList<>();
        for (int variant = 1; variant < 8; variant++) {
            all.add(bits(vary(variant)));
        }
        return all;
    }

    private float[][] vary(int variant) {
        float[][] out = new float[FREQUENCIES][FREQUENCIES];
        for (int i = 0; i < FREQUENCIES; i++) {
            for (int j = 0; j < FREQUENCIES; j++) {
                float value = (variant & 4) == 0 ? spectrum[i][j] : spectrum[j][i];
                boolean negated = ((variant & 1) != 0 && j % 2 == 0) ^ ((variant & 2) != 0 && i % 2 == 0);
                out[i][j] = negated ? -value : value;
            }
        }
        return out;
    }

    private static long[] bits(float[][] spectrum) {
        float[] all = new float[BITS];
        for (int i = 0; i < FREQUENCIES; i++) {
            System.arraycopy(spectrum[i], 0, all, i * FREQUENCIES, FREQUENCIES);
        }
        float[] sorted = all.clone();
        Arrays.sort(sorted);
        float median = sorted[BITS / 2 - 1];
        long[] bits = new long[BITS / 64];
        for (int k = 0; k < BITS; k++) {
            if (all[k] > median) {
                bits[k / 64] |= 1L << (k % 64);
            }
        }
        return bits;
    }

    /** One pass of a box filter along rows and columns; two passes make a tent. */
    private static Luma smooth(Luma in) {
        int w = in.width();
        int h = in.height();
        float[] rows = new float[w * h];
        float[] out = new float[w * h];
        for (int y = 0; y < h; y++) {
            box(in.at(), rows, y * w, 1, w, window(w));
        }
        for (int x = 0; x < w; x++) {
            box(rows, out, x, w, h, window(h));
        }
        return new Luma(w, h, out);
    }

    private static int window(int length) {
        return (length + 2 * SIDE - 1) / (2 * SIDE);
    }

    private static void box(float[] in, float[] out, int start, int stride, int n, int window) {
        int ahead = (window + 2) / 2;
        int behind = window - ahead;
        double sum = 0;
        int count = 0;
        for (int i = 0; i < Math.min(ahead, n); i++) {
            sum += in[start + i * stride];
            count++;
        }
        for (int i = 0; i < n; i++) {
            out[start + i * stride] = (float) (sum / count);
            if (i + ahead < n) {
                sum += in[start + (i + ahead) * stride];
                count++;
            }
            if (i - behind >= 0) {
                sum -= in[start + (i - behind) * stride];
                count--;
            }
        }
    }

    private static float[][] decimate(Luma in) {
        float[][] out = new float[SIDE][SIDE];
        for (int y = 0; y < SIDE; y++) {
            for (int x = 0; x < SIDE; x++) {
                out[y][x] = in.get((int) ((x + 0.5) * in.width() / SIDE), (int) ((y + 0.5) * in.height() / SIDE));
            }
        }
        return out;
    }

    private static float[][] transform(float[][] small) {
        float[][] half = new float[FREQUENCIES][SIDE];
        float[][] out = new float[FREQUENCIES][FREQUENCIES];
        for (int i = 0; i < FREQUENCIES; i++) {
            for (int k = 0; k < SIDE; k++) {
                for (int x = 0; x < SIDE; x++) {
                    half[i][x] += COSINES[i][k] * small[k][x];
                }
            }
            for (int j = 0; j < FREQUENCIES; j++) {
                for (int x = 0; x < SIDE; x++) {
                    out[i][j] += half[i][x] * COSINES[j][x];
                }
            }
        }
        return out;
    }

    /** DCT-II without the constant term. */
    private static float[][] cosines() {
        float[][] c = new float[FREQUENCIES][SIDE];
        for (int i = 0; i < FREQUENCIES; i++) {
            for (int j = 0; j < SIDE; j++) {
                c[i][j] = (float) (Math.sqrt(2.0 / SIDE) * Math.cos(Math.PI / 2 / SIDE * (i + 1) * (2 * j + 1)));
            }
        }
        return c;
    }

    private static int quality(float[][] small) {
        int sum = 0;
        for (int y = 0; y < SIDE; y++) {
            for (int x = 0; x < SIDE; x++) {
                sum += y + 1 < SIDE ? Math.abs((int) ((small[y][x] - small[y + 1][x]) * 100 / 255)) : 0;
                sum += x + 1 < SIDE ? Math.abs((int) ((small[y][x] - small[y][x + 1]) * 100 / 255)) : 0;
            }
        }
        return Math.min(100, sum / 90);
    }
}
