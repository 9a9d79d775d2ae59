package org.tidegate.examination.picture;

import java.util.OptionalInt;

/**
 * Tells on which side of the window the sample well lies: where a square about the middle line is darkest against the frame around it. For wells
 * that blur into the print beside them, so that no region of their own is left.
 */
final class WellSearch {

    /** Sides of the square as shares of the body's breadth: a well's inner square. */
    private static final double[] SIZES = {0.2, 0.28, 0.36};

    /** How much darker than its frame a well is at least, and by which factor it beats the best of the other side (ribs, print, handwriting). */
    private static final double DARKER = 0.035;

    private static final double CLEARLY = 1.5;
    private static final double OFF_MIDDLE = 0.1;
    private static final int STEP = 2;

    private final int w;
    private final int h;
    private final double[] sums;

    private WellSearch(Surface surface) {
        w = surface.width();
        h = surface.height();
        sums = new double[(w + 1) * (h + 1)];
        for (int y = 0; y < h; y++) {
            double row = 0;
            for (int x = 0; x < w; x++) {
                row += 1 - surface.green(x, y) / Math.max(20, surface.lightAt(x, y));
                sums[(y + 1) * (w + 1) + x + 1] = sums[y * (w + 1) + x + 1] + row;
            }
        }
    }

    /**
     * @param left the window's end on the surface
     * @param right its other end
     * @return −1 or 1 for the side; empty where none is clear
     */
    static OptionalInt side(Surface surface, int left, int right) {
        WellSearch search = new WellSearch(surface);
        double before = search.best(0, left);
        double after = search.best(right, search.w);
        double best = Math.max(before, after);
        boolean clear = best >= DARKER && best >= CLEARLY * Math.min(before, after);
        return clear ? OptionalInt.of(before > after ? -1 : 1) : OptionalInt.empty();
    }

    private double best(int from, int to) {
        double best = 0;
        for (double share : SIZES) {
            int size = (int) Math.round(share * h);
            int frame = size / 2;
            int off = (int) (OFF_MIDDLE * h);
            for (int x = from + frame; x + size + frame <= to; x += STEP) {
                for (int y = (h - size) / 2 - off; y <= (h - size) / 2 + off; y += STEP) {
                    best = Math.max(best, darker(x, y, size, frame));
                }
            }
        }
        return best;
    }

    private double darker(int x, int y, int size, int frame) {
        double inside = sum(x, y, x + size, y + size);
        int x0 = x - frame;
        int y0 = Math.max(0, y - frame);
        int x1 = x + size + frame;
        int y1 = Math.min(h, y + size + frame);
        double around = sum(x0, y0, x1, y1) - inside;
        return inside / (size * size) - around / Math.max(1, (x1 - x0) * (y1 - y0) - size * size);
    }

    private double sum(int x0, int y0, int x1, int y1) {
        int row = w + 1;
        return sums[y1 * row + x1] - sums[y0 * row + x1] - sums[y1 * row + x0] + sums[y0 * row + x0];
    }
}
