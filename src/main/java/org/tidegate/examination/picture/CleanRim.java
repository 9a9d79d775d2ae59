package org.tidegate.examination.picture;

import java.awt.Rectangle;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/**
 * How much of an outline laid straight is cassette and nothing else. A cassette's rim shows its own plain colour: whatever runs along an edge there (the
 * body's own border, a shadow, print of something beside or under it) and all beyond is left away; where that cannot be told, nothing is left.
 */
final class CleanRim {

    /** How much darker, lighter or otherwise coloured than the body something has to be (relative) to be looked at as foreign. */
    private static final double STANDS_OUT = 0.1;

    /** Share of a row along the edge that may stand out where it is clean. */
    private static final double CLEAN = 0.03;

    /** Share of a row from which it is the body's own border or something foreign, and no letter of the kit's print. */
    private static final double LINE = 0.25;

    /** Rows that must be clean one after the other, and how deep foreign things are looked for at sides and ends, as shares of the breadth. */
    private static final double RUN = 0.05;

    private static final double DEEP_SIDE = 0.14;

    private static final double DEEP_END = 0.1;

    /** Breadth of the frame that has to be plain in the end, as a share of the breadth, and how much of it may stand out. */
    private static final double FRAME = 0.05;

    private static final double STRAY = 0.02;

    private final Surface surface;

    private CleanRim(Surface surface) {
        this.surface = surface;
    }

    /** The clean part, in pixels, of a picture with transparency; empty where it cannot be told, and where there is nothing to see. */
    static Optional<Rectangle> of(Pixels straight) {
        boolean anything = Arrays.stream(straight.rgb()).anyMatch(p -> p >>> 24 != 0);
        return anything ? new CleanRim(Surface.of(straight)).part() : Optional.empty();
    }

    private Optional<Rectangle> part() {
        int w = surface.width();
        int h = surface.height();
        int end = (int) Math.ceil(DEEP_END * h);
        int side = (int) Math.ceil(DEEP_SIDE * h);
        int left = edge(x -> column(x, 0, h), end);
        int right = edge(x -> column(w - 1 - x, 0, h), end);
        int top = edge(y -> row(y, left, w - right), side);
        int low = edge(y -> row(h - 1 - y, left, w - right), side);
        Rectangle part = new Rectangle(left, top, w - left - right, h - top - low);
        boolean sure = left <= end && right <= end && top <= side && low <= side;
        return sure && framed(part) <= STRAY ? Optional.of(part) : Optional.empty();
    }

    /** Where the clean rows begin, and none that is a line follows soon; beyond the deepest where there are none. */
    private int edge(IntToDoubleFunction share, int deepest) {
        int run = (int) Math.ceil(RUN * surface.height());
        int edge = 0;
        int clean = 0;
        for (int depth = 0; depth < deepest + run; depth++) {
            double stray = share.applyAsDouble(depth);
            boolean foreign = stray > (clean < run ? CLEAN : LINE) && (clean < run || depth < deepest);
            clean = foreign ? 0 : clean + 1;
            edge = foreign ? depth + 1 : edge;
        }
        return edge;
    }

    private double row(int y, int from, int to) {
        int n = 0;
        for (int x = from; x < to; x++) {
            n += standsOut(x, y);
        }
        return (double) n / Math.max(1, to - from);
    }

    private double column(int x, int from, int to) {
        int n = 0;
        for (int y = from; y < to; y++) {
            n += standsOut(x, y);
        }
        return (double) n / Math.max(1, to - from);
    }

    /** Share of the frame that stands out. */
    private double framed(Rectangle part) {
        int frame = Math.max(1, (int) Math.round(FRAME * surface.height()));
        int seen = 0;
        int met = 0;
        for (int y = part.y; y < part.y + part.height; y++) {
            boolean whole = y < part.y + frame || y >= part.y + part.height - frame;
            for (int x = part.x; x < part.x + part.width; x++) {
                if (whole || x < part.x + frame || x >= part.x + part.width - frame) {
                    seen++;
                    met += standsOut(x, y);
                }
            }
        }
        return (double) met / Math.max(1, seen);
    }

    private int standsOut(int x, int y) {
        return surface.difference(x, y) > STANDS_OUT ? 1 : 0;
    }
}
