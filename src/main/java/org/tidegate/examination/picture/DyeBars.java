package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Finds lines of dye on an upright body: narrow bars right across its middle that end where a result window would, and take clearly more of one colour
 * than of another. Light and shadow take of all colours alike, so neither makes a bar nor hides one.
 */
final class DyeBars {

    /**
     * One bar.
     *
     * @param at middle, as a share of the body's length
     * @param strength by how much more it takes of its strongest colour than of its weakest, 0–1
     * @param purity the share of what it takes of its strongest colour that it leaves of its weakest, 0–1: most of it for a dye, little for a rim
     * @param fromV where it begins, as a share of the body's breadth
     * @param toV where it ends
     */
    record Bar(double at, double strength, double purity, double fromV, double toV) {

        double height() {
            return toV - fromV;
        }

        Bar turned() {
            return new Bar(1 - at, strength, purity, 1 - toV, 1 - fromV);
        }
    }

    /** Where on a body lines are looked for, shares of its length and breadth. */
    private static final double[] ALONG = {0.26, 0.74};

    private static final double[] ACROSS = {0.38, 0.62};

    /** Weakest dye that is looked at, and how far it must stand out of the noise. */
    private static final double LEAST = 0.022;

    private static final double OUT_OF_NOISE = 4;

    /** Where the membrane beside a line is looked at, shares of the body's length: further than a line's half, nearer than the next line. */
    private static final double BESIDE_FROM = 0.02;

    private static final double BESIDE_TO = 0.036;
    private static final double APART = 0.05;

    /** A bar goes on while it is at least so strong against its middle. */
    private static final double GOES_ON = 0.45;

    /** Heights of a bar, and how far its middle may be off the body's, shares of the breadth. */
    private static final double[] HEIGHTS = {0.2, 0.64};

    private static final double OFF_MIDDLE = 0.14;

    /** Lines of one strip are dyed much alike: what is so much less pure than the strongest is the rim of the window. */
    private static final double ALIKE = 0.35;

    /** How far in all a bar may lean, pixels, and over how many rows a place is averaged to each side. */
    private static final int LEANING = 6;

    private static final int ROWS = 3;

    private final int w;
    private final int h;
    private final float[][] channels;
    private final int near;
    private final int far;

    private DyeBars(Surface surface) {
        this.w = surface.width();
        this.h = surface.height();
        this.channels = new float[3][];
        for (int c = 0; c < 3; c++) {
            channels[c] = EdgeMap.smooth(surface.pixels().channel(c), w, h);
        }
        this.near = (int) Math.round(BESIDE_FROM * w);
        this.far = (int) Math.round(BESIDE_TO * w);
    }

    /** @return strongest first */
    static List<Bar> on(Surface surface) {
        return new DyeBars(surface).find();
    }

    private List<Bar> find() {
        double[][] bands = new double[3][w];
        int top = (int) (ACROSS[0] * h);
        int low = (int) Math.ceil(ACROSS[1] * h);
        for (int c = 0; c < 3; c++) {
            for (int y = top; y < low; y++) {
                for (int x = 0; x < w; x++) {
                    bands[c][x] += channels[c][y * w + x] / (low - top);
                }
            }
        }
        int from = (int) (ALONG[0] * w);
        int to = (int) (ALONG[1] * w);
        double[] dye = new double[w];
        for (int x = from; x < to; x++) {
            dye[x] = Math.min(spread(taken(bands, x, -1)), spread(taken(bands, x, 1)));
        }
        double least = Math.max(LEAST, OUT_OF_NOISE * noise(Arrays.copyOfRange(dye, from, to)));
        List<Bar> bars = new ArrayList<>();
        for (int x : peaks(dye, from, to, least)) {
            bar(x, dye[x], taken(bands, x, 0)).ifPresent(bars::add);
        }
        return bars.stream()
                .filter(b -> b.purity() >= ALIKE * bars.get(0).purity())
                .toList();
    }

    /** @param side against what lies before it (−1), behind it (1) or on both sides (0): a step from one colour to another is a bar against one only */
    private double[] taken(double[][] bands, int x, int side) {
        double[] taken = new double[3];
        for (int c = 0; c < 3; c++) {
            double before = 0;
            double behind = 0;
            for (int d = near; d <= far; d++) {
                before += bands[c][x - d] / (far - near + 1);
                behind += bands[c][x + d] / (far - near + 1);
            }
            double line = (bands[c][x - 1] + bands[c][x] + bands[c][x + 1]) / 3;
            double beside = side < 0 ? before : side > 0 ? behind : (before + behind) / 2;
            taken[c] = 1 - line / Math.max(8, beside);
        }
        return taken;
    }

    /** None where the strongest colour is not taken from at all: something light on something dark is no dye. */
    private static double spread(double[] taken) {
        double most = Math.max(taken[0], Math.max(taken[1], taken[2]));
        double least = Math.min(taken[0], Math.min(taken[1], taken[2]));
        return most <= 0 ? 0 : Math.min(most, most - least);
    }

    private static double purity(double[] taken) {
        double most = Math.max(taken[0], Math.max(taken[1], taken[2]));
        return most <= 0 ? 0 : spread(taken) / most;
    }

    private static double noise(double[] values) {
        Arrays.sort(values);
        return 1.4826 * values[values.length / 2];
    }

    private List<Integer> peaks(double[] dye, int from, int to, double least) {
        List<Integer> peaks = new ArrayList<>();
        double[] left = dye.clone();
        while (peaks.size() < 4) {
            int best = from;
            for (int x = from; x < to; x++) {
                best = left[x] > left[best] ? x : best;
            }
            if (left[best] < least) {
                break;
            }
            peaks.add(best);
            int apart = (int) (APART * w);
            Arrays.fill(left, Math.max(0, best - apart), Math.min(w, best + apart + 1), 0);
        }
        return peaks;
    }

    private Optional<Bar> bar(int x, double strength, double[] taken) {
        int strongest = 0;
        int weakest = 0;
        for (int c = 1; c < 3; c++) {
            strongest = taken[c] > taken[strongest] ? c : strongest;
            weakest = taken[c] < taken[weakest] ? c : weakest;
        }
        int middle = h / 2;
        double goesOn = GOES_ON * spread(taken);
        int top = end(x, middle, -1, strongest, weakest, goesOn);
        int low = end(x, middle, 1, strongest, weakest, goesOn);
        double height = (double) (low - top) / h;
        double off = Math.abs((low + top) / 2.0 / h - 0.5);
        return height < HEIGHTS[0] || height > HEIGHTS[1] || off > OFF_MIDDLE
                ? Optional.empty()
                : Optional.of(new Bar((x + 0.5) / w, strength, purity(taken), (double) top / h, (double) low / h));
    }

    private int end(int from, int middle, int step, int strongest, int weakest, double goesOn) {
        int x = from;
        int y = middle;
        while (y + step >= ROWS && y + step < h - ROWS) {
            int next = x;
            double most = -1;
            for (int candidate = x - 1; candidate <= x + 1; candidate++) {
                if (Math.abs(candidate - from) <= LEANING) {
                    double here = here(candidate, y + step, strongest) - here(candidate, y + step, weakest);
                    if (here > most) {
                        most = here;
                        next = candidate;
                    }
                }
            }
            if (most < goesOn) {
                break;
            }
            x = next;
            y += step;
        }
        return y;
    }

    /** Share that a colour loses about a place. */
    private double here(int x, int y, int c) {
        double line = 0;
        double beside = 0;
        for (int row = y - ROWS; row <= y + ROWS; row++) {
            for (int d = -1; d <= 1; d++) {
                line += channels[c][row * w + x + d] / 3;
            }
            for (int d = near; d <= far; d++) {
                beside += (channels[c][row * w + x - d] + channels[c][row * w + x + d]) / (2 * (far - near + 1));
            }
        }
        return 1 - line / Math.max(8, beside);
    }
}
