package org.tidegate.examination.picture;

import java.awt.image.BufferedImage;

/**
 * Brightness of a picture, row by row, 0–255 (ITU-R BT.601 weights).
 *
 * @param at row-major, width × height
 */
public record Luma(int width, int height, float[] at) {

    /** Of any picture that has colours. */
    public static Luma of(BufferedImage image) {
        int w = image.getWidth();
        int h = image.getHeight();
        float[] luma = new float[w * h];
        int[] row = new int[w];
        for (int y = 0; y < h; y++) {
            row(image, y, row);
            for (int x = 0; x < w; x++) {
                int p = row[x];
                luma[y * w + x] = 0.299f * ((p >> 16) & 255) + 0.587f * ((p >> 8) & 255) + 0.114f * (p & 255);
            }
        }
        return new Luma(w, h, luma);
    }

    public float get(int x, int y) {
        return at[y * width + x];
    }

    /** Asking the picture itself converts pixel by pixel; what is stored as packed colours is quicker copied. */
    private static void row(BufferedImage image, int y, int[] row) {
        if (image.getType() == BufferedImage.TYPE_INT_RGB) {
            image.getRaster().getDataElements(0, y, row.length, 1, row);
        } else {
            image.getRGB(0, y, row.length, 1, row, 0, row.length);
        }
    }

    /** Between pixels, bilinear; places outside repeat the border. */
    public float sample(double x, double y) {
        double cx = Math.max(0, Math.min(width - 1.001, x));
        double cy = Math.max(0, Math.min(height - 1.001, y));
        int left = (int) cx;
        int above = (int) cy;
        int i = above * width + left;
        float fx = (float) (cx - left);
        float fy = (float) (cy - above);
        int right = width > 1 ? 1 : 0;
        int down = height > 1 ? width : 0;
        float top = at[i] + fx * (at[i + right] - at[i]);
        float low = at[i + down] + fx * (at[i + down + right] - at[i + down]);
        return top + fy * (low - top);
    }

    /** Half as wide and high, each pixel the mean of four; an odd last row or column is left away. */
    public Luma halved() {
        int w = width / 2;
        int h = height / 2;
        float[] out = new float[w * h];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int i = 2 * y * width + 2 * x;
                out[y * w + x] = (at[i] + at[i + 1] + at[i + width] + at[i + width + 1]) / 4;
            }
        }
        return new Luma(w, h, out);
    }
}
