package org.tidegate.examination.picture.mrz;

import java.util.Arrays;
import org.tidegate.examination.picture.Luma;

/**
 * How much darker than the paper about it each pixel is.
 *
 * @param at row-major, width × height, share of the paper's light that is missing, 0–1
 * @param full what solid print takes away
 */
record Ink(int width, int height, float[] at, float full) {

    private static final int BLOCK = 24;
    private static final int LEVELS = 256;
    private static final double PAPER = 0.8;
    private static final double SOLID = 0.9;
    private static final float FAINT = 0.12f;

    static Ink of(Luma luma) {
        int w = luma.width();
        int h = luma.height();
        Luma paper = paper(luma);
        float[] ink = new float[w * h];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                float light = paper.sample((x + 0.5) / BLOCK - 0.5, (y + 0.5) / BLOCK - 0.5);
                ink[y * w + x] = Math.max(0, 1 - luma.at()[y * w + x] / Math.max(8, light));
            }
        }
        return new Ink(w, h, ink, solid(ink));
    }

    /** The light of the paper, a value a block. */
    private static Luma paper(Luma luma) {
        int columns = Math.max(1, (luma.width() + BLOCK - 1) / BLOCK);
        int rows = Math.max(1, (luma.height() + BLOCK - 1) / BLOCK);
        float[] out = new float[columns * rows];
        for (int i = 0; i < out.length; i++) {
            int[] levels = new int[LEVELS];
            int left = i % columns * BLOCK;
            int top = Math.floorDiv(i, columns) * BLOCK;
            for (int y = top; y < Math.min(top + BLOCK, luma.height()); y++) {
                for (int x = left; x < Math.min(left + BLOCK, luma.width()); x++) {
                    levels[(int) luma.at()[y * luma.width() + x]]++;
                }
            }
            out[i] = level(levels, PAPER);
        }
        return new Luma(columns, rows, out);
    }

    /** Below which so large a share lies. */
    private static int level(int[] levels, double share) {
        int left = (int) (share * Arrays.stream(levels).sum());
        int level = 0;
        while (level < LEVELS - 1 && left >= levels[level]) {
            left -= levels[level];
            level++;
        }
        return level;
    }

    private static float solid(float[] ink) {
        int[] levels = new int[LEVELS];
        for (float v : ink) {
            if (v > FAINT) {
                levels[(int) (v * (LEVELS - 1))]++;
            }
        }
        return Math.max(FAINT, level(levels, SOLID) / (LEVELS - 1f));
    }

    /** Where there is at least half the ink of solid print. */
    boolean[] mask() {
        boolean[] mask = new boolean[at.length];
        for (int i = 0; i < mask.length; i++) {
            mask[i] = at[i] > 0.5f * full;
        }
        return mask;
    }

    /** Between pixels, bilinear; no ink outside. */
    float sample(double x, double y) {
        int left = (int) Math.floor(x);
        int top = (int) Math.floor(y);
        if (left < 0 || top < 0 || left + 1 >= width || top + 1 >= height) {
            return 0;
        }
        float fx = (float) (x - left);
        float fy = (float) (y - top);
        int i = top * width + left;
        float above = at[i] + fx * (at[i + 1] - at[i]);
        float below = at[i + width] + fx * (at[i + width + 1] - at[i + width]);
        return above + fy * (below - above);
    }
}
