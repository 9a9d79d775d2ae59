package org.tidegate.examination.picture;

import java.awt.image.BufferedImage;

/**
 * Colours of a picture, row by row, packed 0xRRGGBB.
 *
 * @param rgb row-major, width × height
 */
record Pixels(int width, int height, int[] rgb) {

    /** Bits between channels where all three are in one number. */
    private static final int LANE = 20;

    static Pixels of(BufferedImage image) {
        int w = image.getWidth();
        int h = image.getHeight();
        return new Pixels(w, h, image.getRGB(0, 0, w, h, null, 0, w));
    }

    /** Averages whole blocks so that the longer side is about the given one; never enlarged. */
    Pixels shrunkTo(int longSide) {
        int step = Math.max(1, Math.round((float) Math.max(width, height) / longSide));
        return step == 1 ? this : block(step);
    }

    /** How many times finer this picture is than the given smaller one. */
    double scaleOver(Pixels smaller) {
        return (double) Math.max(1, Math.round((double) width / smaller.width));
    }

    /** In blocks of at most 64 pixels' side: their sums have 20 bits. */
    private Pixels block(int step) {
        int w = width / step;
        int h = height / step;
        int[] out = new int[w * h];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                out[y * w + x] = mean(x * step, y * step, step);
            }
        }
        return new Pixels(w, h, out);
    }

    private int mean(int left, int top, int side) {
        long sum = 0;
        for (int y = top; y < top + side; y++) {
            for (int i = y * width + left; i < y * width + left + side; i++) {
                sum += apart(rgb[i]);
            }
        }
        int n = side * side;
        return (channelOf(sum, 0) / n) << 16 | (channelOf(sum, 1) / n) << 8 | channelOf(sum, 2) / n;
    }

    /** One colour channel as a plane 0–255: 0 red, 1 green, 2 blue. */
    float[] channel(int which) {
        int shift = 16 - 8 * which;
        float[] out = new float[rgb.length];
        for (int i = 0; i < rgb.length; i++) {
            out[i] = (rgb[i] >> shift) & 255;
        }
        return out;
    }

    /** Brightness 0–255 (ITU-R BT.601 weights), row by row. */
    float[] luma() {
        float[] luma = new float[rgb.length];
        for (int i = 0; i < luma.length; i++) {
            int p = rgb[i];
            luma[i] = 0.299f * ((p >> 16) & 255) + 0.587f * ((p >> 8) & 255) + 0.114f * (p & 255);
        }
        return luma;
    }

    /** Green, 0–255, that the given share of the picture does not exceed. */
    int green(double share) {
        int[] counts = new int[256];
        for (int p : rgb) {
            counts[green(p)]++;
        }
        int level = 0;
        for (long below = counts[0]; below < share * rgb.length && level < 255; below += counts[level]) {
            level++;
        }
        return level;
    }

    /**
     * The colour between pixels, bilinear; places outside repeat the border. All three channels in one number, which matters where millions of
     * places are looked at: 20 bits each, in 1024ths, so that four of them can be added up. {@link #channelOf} tells them apart.
     */
    long packedAt(double x, double y) {
        int cx = Math.max(0, Math.min((int) (32 * (width - 1.05)), (int) (32 * x)));
        int cy = Math.max(0, Math.min((int) (32 * (height - 1.05)), (int) (32 * y)));
        int i = (cy >> 5) * width + (cx >> 5);
        int right = (cx >> 5) + 1 < width ? 1 : 0;
        int down = (cy >> 5) + 1 < height ? width : 0;
        int fx = cx & 31;
        int fy = cy & 31;
        long upper = apart(rgb[i]) * (32 - fx) + apart(rgb[i + right]) * fx;
        long lower = apart(rgb[i + down]) * (32 - fx) + apart(rgb[i + down + right]) * fx;
        return upper * (32 - fy) + lower * fy;
    }

    /** A channel's part of such a sum: 0 red, 1 green, 2 blue. */
    static int channelOf(long packed, int which) {
        return (int) (packed >> (LANE * (2 - which))) & ((1 << LANE) - 1);
    }

    private static long apart(int p) {
        return (long) (p & 0xff0000) << (2 * LANE - 16) | (long) (p & 0xff00) << (LANE - 8) | p & 0xff;
    }

    private static int green(int p) {
        return (p >> 8) & 255;
    }
}
