package org.tidegate.examination.picture;

import java.awt.image.BufferedImage;

/**
 * Brightness of a picture, row by row, 0–255 (ITU-R BT.601 weights).
 *
 * @param at row-major, width × height
 */
record Luma(int width, int height, float[] at) {

    static Luma of(BufferedImage image) {
        int w = image.getWidth();
        int h = image.getHeight();
        float[] luma = new float[w * h];
        int[] row = new int[w];
        for (int y = 0; y < h; y++) {
            image.getRGB(0, y, w, 1, row, 0, w);
            for (int x = 0; x < w; x++) {
                int p = row[x];
                luma[y * w + x] = 0.299f * ((p >> 16) & 255) + 0.587f * ((p >> 8) & 255) + 0.114f * (p & 255);
            }
        }
        return new Luma(w, h, luma);
    }

    float get(int x, int y) {
        return at[y * width + x];
    }
}
