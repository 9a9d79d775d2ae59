package org.tidegate.examination.picture;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Finds a result window by its rim alone: a rectangle about the middle line of an upright body whose four sides are thinner and darker than what
 * lies on either side of them, and grey: a line of dye across the membrane is no side. Sees windows whose membrane is as light as the body, and whose rim is too faint or too blurred to hang together.
 */
final class WindowRim {

    /** Half of a rim's thickness, as a share of the body's length. */
    private static final double REACH = 0.016;

    /** Darkness that counts in full: a rim that is there at all all round is worth more than a dark part of something else. */
    private static final float FULL = 0.05f;

    private static final double LEAST_SEEN = 0.5;

    /** Longer is better by so much: a line across the membrane is no end of the window. */
    private static final double FOR_LENGTH = 0.5;

    private static final double FOR_MARKS = 0.6;

    /** Alikeness of the channels up to which something is a dyed line, and from which on it is a rim in full. */
    private static final float DYED = 0.65f;

    private static final float GREY = 0.85f;

    private static final int STEP = 2;

    /** How far a rim may leave its straight line, pixels: outlines of bodies are not exact. */
    private static final int ASKEW = 2;

    /** Where a window may lie and how long it may be, shares of the body's length and breadth. */
    private static final double[] STARTS = {0.2, 0.62};

    private static final double[] LENGTHS = {0.15, 0.4};
    private static final double[] TOPS = {0.12, 0.42};
    private static final double[] MIDDLES = {0.4, 0.6};
    private static final double[] CENTRES = {0.28, 0.72};

    /** @param seen share of the rim that was seen on its weakest side, 0–1 */
    record Found(int left, int top, int right, int bottom, double seen) {}

    private final int w;
    private final int h;

    /** Sums along rows and down columns of how much of a rim each place is, 0–1. */
    private final float[] alongRows;

    private final float[] downColumns;

    private WindowRim(float[] rim, int w, int h) {
        this.w = w;
        this.h = h;
        this.alongRows = new float[(w + 1) * h];
        this.downColumns = new float[w * (h + 1)];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                alongRows[y * (w + 1) + x + 1] = alongRows[y * (w + 1) + x] + rim[y * w + x];
                downColumns[(y + 1) * w + x] = downColumns[y * w + x] + rim[y * w + x];
            }
        }
    }

    static Optional<Found> in(Surface surface) {
        return in(surface, 0);
    }

    /** @param lean by how many pixels a pixel its ends lean over, where the body's outline is not exact */
    static Optional<Found> in(Surface surface, double lean) {
        int w = surface.width();
        int h = surface.height();
        float[] luma = EdgeMap.smooth(surface.pixels().luma(), w, h);
        float[] dark = ThinDark.of(luma, w, h, (int) Math.round(REACH * w));
        float[] sorted = dark.clone();
        Arrays.sort(sorted);
        float noise = sorted[sorted.length / 2];
        float[] neutrality = surface.neutrality();
        for (int i = 0; i < dark.length; i++) {
            float colourless = Math.max(0, Math.min(1, (neutrality[i] - DYED) / (GREY - DYED)));
            dark[i] = colourless * Math.max(0, Math.min(FULL, dark[i] - noise)) / FULL;
        }
        float[] tolerant = ThinDark.widened(leaning(dark, w, h, lean), w, h, ASKEW);
        return Optional.ofNullable(new WindowRim(tolerant, w, h).best()).filter(f -> f.seen() >= LEAST_SEEN);
    }

    private static float[] leaning(float[] marks, int w, int h, double lean) {
        float[] straight = new float[marks.length];
        for (int y = 0; y < h; y++) {
            int by = (int) Math.round(lean * (y - h / 2.0));
            for (int x = Math.max(0, -by); x < Math.min(w, w - by); x++) {
                straight[y * w + x] = marks[y * w + x + by];
            }
        }
        return straight;
    }

    private @Nullable Found best() {
        Found best = null;
        for (int top = (int) (TOPS[0] * h); top < TOPS[1] * h; top += STEP) {
            for (int bottom = (int) (2 * MIDDLES[0] * h) - top; bottom < 2 * MIDDLES[1] * h - top; bottom += STEP) {
                best = better(best, best(top, Math.min(h - 1, bottom)));
            }
        }
        return best;
    }

    private @Nullable Found best(int top, int bottom) {
        Found best = null;
        for (int left = (int) (STARTS[0] * w); left < STARTS[1] * w; left += STEP) {
            if (side(left, top, bottom) < LEAST_SEEN) {
                continue;
            }
            for (int length = (int) (LENGTHS[0] * w); length < LENGTHS[1] * w && left + length < w; length += STEP) {
                int right = left + length;
                if (left + right < 2 * CENTRES[0] * w || left + right > 2 * CENTRES[1] * w) {
                    continue;
                }
                double seen = Math.min(
                        Math.min(side(left, top, bottom), side(right, top, bottom)),
                        Math.min(edge(top, left, right), edge(bottom, left, right)));
                best = better(best, new Found(left, top, right, bottom, seen));
            }
        }
        return best;
    }

    private @Nullable Found better(@Nullable Found a, @Nullable Found b) {
        return a == null || (b != null && worth(b) > worth(a)) ? b : a;
    }

    private double worth(Found f) {
        return f.seen() + FOR_LENGTH * (f.right() - f.left()) / w - FOR_MARKS * marksInside(f);
    }

    /** Share of the middle rows that a rim, print or handwriting takes: a membrane bears nothing grey. */
    private double marksInside(Found f) {
        int rim = 2 * (int) Math.round(REACH * w);
        if (f.right() - f.left() <= 2 * rim) {
            return 0;
        }
        int middle = (f.top() + f.bottom()) / 2;
        int off = (f.bottom() - f.top()) / 6;
        return (edge(middle - off, f.left() + rim, f.right() - rim)
                        + edge(middle, f.left() + rim, f.right() - rim)
                        + edge(middle + off, f.left() + rim, f.right() - rim))
                / 3;
    }

    private double side(int x, int top, int bottom) {
        return (downColumns[(bottom + 1) * w + x] - downColumns[top * w + x]) / (bottom + 1 - top);
    }

    private double edge(int y, int left, int right) {
        return (alongRows[y * (w + 1) + right + 1] - alongRows[y * (w + 1) + left]) / (right + 1 - left);
    }
}
