package org.tidegate.examination.picture;

import java.util.Arrays;
import org.tidegate.finding.PictureFinding.Corner;

/** Moves each side of a guessed outline to the straight edge near it that is seen along most of its length. */
final class SideFit {

    /** How far an edge is looked for inwards and outwards, as shares of the extent across it. */
    private static final double INWARDS = 0.16;

    private static final double OUTWARDS = 0.2;

    private static final int STEPS = 28;
    private static final int SAMPLES = 25;

    /** Steeper than this is no better: an edge that goes on counts, not one that is strong. */
    private static final double ENOUGH = 14;

    /** Least share of the side along which an edge must be seen. */
    private static final double SEEN = 0.55;

    private static final double NEARNESS = 0.2;

    /** How far an outline may be off where its edges are judged, pixels. */
    private static final double EXACT = 4;

    /** What a side says that the picture cuts off: it is not known to be missing. */
    private static final double CUT_OFF = 0.6;

    private final Pixels image;

    private SideFit(Pixels image) {
        this.image = image;
    }

    static Quad refine(Quad guess, Pixels image) {
        SideFit fit = new SideFit(image);
        Side top = fit.side(guess.a(), guess.b(), guess.breadth());
        Side right = fit.side(guess.b(), guess.c(), guess.length());
        Side bottom = fit.side(guess.c(), guess.d(), guess.breadth());
        Side left = fit.side(guess.d(), guess.a(), guess.length());
        Quad better = new Quad(left.meet(top), top.meet(right), right.meet(bottom), bottom.meet(left));
        return better.area() > 0.4 * guess.area() ? better : guess;
    }

    /** Share of its weakest side along which an edge of the picture is seen, 0–1. */
    static double seen(Quad outline, Pixels image) {
        SideFit fit = new SideFit(image);
        return Math.min(
                Math.min(fit.seen(outline.a(), outline.b()), fit.seen(outline.b(), outline.c())),
                Math.min(fit.seen(outline.c(), outline.d()), fit.seen(outline.d(), outline.a())));
    }

    private double seen(Corner from, Corner to) {
        if (isCutOff(from) && isCutOff(to)) {
            return CUT_OFF;
        }
        double length = Quad.distance(from, to);
        double nx = (to.y() - from.y()) / length;
        double ny = -(to.x() - from.x()) / length;
        double sum = 0;
        for (double[] across : steepness(from, to, nx, ny, -EXACT, EXACT)) {
            sum += Arrays.stream(across).max().orElse(0);
        }
        return sum / SAMPLES;
    }

    private boolean isCutOff(Corner c) {
        return Math.min(c.x(), c.y()) < EXACT || c.x() > image.width() - EXACT || c.y() > image.height() - EXACT;
    }

    private record Side(Corner from, Corner to) {

        Corner meet(Side other) {
            double dx = to.x() - from.x();
            double dy = to.y() - from.y();
            double ex = other.to.x() - other.from.x();
            double ey = other.to.y() - other.from.y();
            double den = dx * ey - dy * ex;
            double t = ((other.from.x() - from.x()) * ey - (other.from.y() - from.y()) * ex) / den;
            return new Corner(from.x() + t * dx, from.y() + t * dy);
        }
    }

    /** @param across the outline's extent at right angles to this side */
    private Side side(Corner from, Corner to, double across) {
        double length = Quad.distance(from, to);
        double nx = (to.y() - from.y()) / length;
        double ny = -(to.x() - from.x()) / length;
        double low = -INWARDS * across;
        double high = OUTWARDS * across;
        double[][] steep = steepness(from, to, nx, ny, low, high);
        int[] best = best(steep, low, high);
        if (best.length == 0) {
            return new Side(from, to);
        }
        double first = low + (high - low) * best[0] / (STEPS - 1);
        double last = low + (high - low) * best[1] / (STEPS - 1);
        return new Side(
                new Corner(from.x() + first * nx, from.y() + first * ny),
                new Corner(to.x() + last * nx, to.y() + last * ny));
    }

    /** For each sample along the side, how steep the colour is at each step across it, at most {@link #ENOUGH}, as a share of that. */
    private double[][] steepness(Corner from, Corner to, double nx, double ny, double low, double high) {
        double[][] steep = new double[SAMPLES][STEPS];
        double half = Math.max(1, (high - low) / (STEPS - 1) / 2);
        for (int s = 0; s < SAMPLES; s++) {
            double t = 0.06 + 0.88 * s / (SAMPLES - 1);
            double x = from.x() + t * (to.x() - from.x());
            double y = from.y() + t * (to.y() - from.y());
            for (int k = 0; k < STEPS; k++) {
                double off = low + (high - low) * k / (STEPS - 1);
                steep[s][k] = Math.min(1, change(x, y, nx, ny, off - half, off + half) / ENOUGH);
            }
        }
        return steep;
    }

    private double change(double x, double y, double nx, double ny, double near, double far) {
        long inner = image.packedAt(x + near * nx, y + near * ny);
        long outer = image.packedAt(x + far * nx, y + far * ny);
        int most = 0;
        for (int c = 0; c < 3; c++) {
            most = Math.max(most, Math.abs(Pixels.channelOf(outer, c) - Pixels.channelOf(inner, c)));
        }
        return most / 1024.0;
    }

    /** Steps at the side's first and last end between which the edge is seen best; none where it is hardly seen. */
    private static int[] best(double[][] steep, double low, double high) {
        int[] best = {};
        double most = SEEN;
        double zero = -low / (high - low) * (STEPS - 1);
        for (int i = 0; i < STEPS; i++) {
            for (int j = Math.max(0, i - STEPS / 3); j < Math.min(STEPS, i + STEPS / 3 + 1); j++) {
                double sum = 0;
                for (int s = 0; s < SAMPLES; s++) {
                    int k = Math.round(i + (j - i) * (float) s / (SAMPLES - 1));
                    sum += steep[s][k];
                }
                double away = Math.abs((i + j) / 2.0 - zero) / STEPS;
                double seen = sum / SAMPLES - NEARNESS * away;
                if (seen > most) {
                    most = seen;
                    best = new int[] {i, j};
                }
            }
        }
        return best;
    }
}
