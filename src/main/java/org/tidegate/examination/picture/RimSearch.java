package org.tidegate.examination.picture;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Looks for the rectangle about the middle line of an upright body that has a rim on all four sides, is long and bears no such mark inside. */
final class RimSearch {

    private static final double LEAST_SEEN = 0.5;

    /** Longer is better by so much: a line across the membrane is no end of the window. */
    private static final double FOR_LENGTH = 0.5;

    private static final double FOR_MARKS = 0.6;

    private static final int STEP = 2;

    /** Where a window may lie and how long it may be, shares of the body's length and breadth. */
    private static final double[] STARTS = {0.2, 0.62};

    private static final double[] LENGTHS = {0.15, 0.4};
    private static final double[] TOPS = {0.12, 0.42};
    private static final double[] MIDDLES = {0.4, 0.6};
    private static final double[] CENTRES = {0.28, 0.72};

    private final int w;
    private final int h;
    private final int rim;

    /** Sums along rows and down columns of how much of a rim each place is, 0–1. */
    private final float[] alongRows;

    private final float[] downColumns;

    /**
     * @param marks how much of a rim each place is, 0–1, row by row
     * @param rim thickness of a rim, pixels
     */
    RimSearch(float[] marks, int w, int h, int rim) {
        this.w = w;
        this.h = h;
        this.rim = rim;
        this.alongRows = new float[(w + 1) * h];
        this.downColumns = new float[w * (h + 1)];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                alongRows[y * (w + 1) + x + 1] = alongRows[y * (w + 1) + x] + marks[y * w + x];
                downColumns[(y + 1) * w + x] = downColumns[y * w + x] + marks[y * w + x];
            }
        }
    }
    /** The best rectangle; empty where too little of every one is seen. */
    Optional<WindowRim.Found> find() {
        WindowRim.@Nullable Found best = null;
        for (int top = (int) (TOPS[0] * h); top < TOPS[1] * h; top += STEP) {
            for (int bottom = (int) (2 * MIDDLES[0] * h) - top; bottom < 2 * MIDDLES[1] * h - top; bottom += STEP) {
                best = best(best, top, Math.min(h - 1, bottom));
            }
        }
        return Optional.ofNullable(best).filter(f -> f.seen() >= LEAST_SEEN);
    }

    private WindowRim.@Nullable Found best(WindowRim.@Nullable Found before, int top, int bottom) {
        WindowRim.Found best = before;
        double most = before == null ? -1 : worth(before);
        for (int left = (int) (STARTS[0] * w); left < STARTS[1] * w; left += STEP) {
            double leftSeen = side(left, top, bottom);
            if (leftSeen < LEAST_SEEN) {
                continue;
            }
            for (int length = (int) (LENGTHS[0] * w); length < LENGTHS[1] * w && left + length < w; length += STEP) {
                int right = left + length;
                if (left + right < 2 * CENTRES[0] * w || left + right > 2 * CENTRES[1] * w) {
                    continue;
                }
                double seen = Math.min(
                        Math.min(leftSeen, side(right, top, bottom)),
                        Math.min(edge(top, left, right), edge(bottom, left, right)));
                WindowRim.Found found = new WindowRim.Found(left, top, right, bottom, seen);
                if (unmarked(found) > most && worth(found) > most) {
                    best = found;
                    most = worth(found);
                }
            }
        }
        return best;
    }

    private double worth(WindowRim.Found f) {
        return unmarked(f) - FOR_MARKS * marksInside(f);
    }

    /** What it is worth if nothing grey lies inside. */
    private double unmarked(WindowRim.Found f) {
        return f.seen() + FOR_LENGTH * (f.right() - f.left()) / w;
    }

    /** Share of the middle rows that a rim, print or handwriting takes: a membrane bears nothing grey. */
    private double marksInside(WindowRim.Found f) {
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
