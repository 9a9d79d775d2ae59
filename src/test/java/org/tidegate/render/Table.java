package org.tidegate.render;

import java.awt.Color;
import java.util.List;
import java.util.Random;

/** A table top without end, its colour a function of the place in millimetres. */
record Table(Kind kind, Color first, Color second, double pitch, double angle, long seed) {

    enum Kind {
        PLAIN,
        WOOD,
        CHECKED,
        STRIPED,
        CLOTH,
        STONE,
        TILED,
        SPECKLED
    }

    private static final List<Kind> ORDINARY =
            List.of(Kind.PLAIN, Kind.WOOD, Kind.CHECKED, Kind.STRIPED, Kind.CLOTH, Kind.STONE);

    private static final List<Kind> KEPT = List.of(Kind.TILED, Kind.SPECKLED, Kind.PLAIN);

    static Table random(Random r) {
        return of(r, ORDINARY);
    }

    static Table drawn(Draws d) {
        return of(d.random(), d.of(List.of(ORDINARY), List.of(KEPT)));
    }

    private static Table of(Random r, List<Kind> kinds) {
        Color first = new Color(50 + r.nextInt(190), 40 + r.nextInt(170), 30 + r.nextInt(170));
        double contrast = 0.6 + 0.3 * r.nextDouble();
        return new Table(
                kinds.get(r.nextInt(kinds.size())),
                first,
                Paint.shade(first, contrast),
                12 + 30 * r.nextDouble(),
                Math.PI * r.nextDouble(),
                r.nextLong());
    }

    /** Share of the second colour at a place, 0–1. */
    private double mix(double x, double y) {
        double u = x * Math.cos(angle) + y * Math.sin(angle);
        double v = y * Math.cos(angle) - x * Math.sin(angle);
        return switch (kind) {
            case PLAIN -> 0.15 * wave(u / 90, v / 90);
            case WOOD -> 0.5 + 0.5 * Math.sin(v / 2.2 + 5 * wave(u / 60, v / 14)) * wave(u / 30, v / 8);
            case CHECKED -> (Math.floorMod((int) Math.floor(u / pitch) + (int) Math.floor(v / pitch), 2));
            case STRIPED -> Math.floorMod((int) Math.floor(u / pitch * 2), 3) == 0 ? 1 : 0;
            case CLOTH -> 0.3 + 0.2 * Math.sin(u * 4) * Math.sin(v * 4) + 0.2 * wave(u / 40, v / 40);
            case TILED -> joint(u) || joint(v) ? 1 : 0.1 * wave(u / 50, v / 50);
            case SPECKLED -> wave(u / 1.6, v / 1.6) > 0.8 ? 1 : 0;
            case STONE -> Math.pow(wave(u / 9, v / 9) * 0.6 + wave(u / 2, v / 2) * 0.4, 2);
        };
    }

    /** Between two tiles, which lie three pitches apart. */
    private boolean joint(double place) {
        return place - 3 * pitch * Math.floor(place / (3 * pitch)) < 2.5;
    }

    /** sRGB 0–255: red, green, blue. */
    double[] colour(double x, double y) {
        double share = mix(x, y);
        double[] colour = new double[3];
        for (int c = 0; c < 3; c++) {
            colour[c] = component(first, c) * (1 - share) + component(second, c) * share;
        }
        return colour;
    }

    private static int component(Color c, int channel) {
        return (c.getRGB() >> (16 - 8 * channel)) & 255;
    }

    /** Smooth value noise, 0–1, one knot a unit. */
    private double wave(double x, double y) {
        int ix = (int) Math.floor(x);
        int iy = (int) Math.floor(y);
        double fx = smooth(x - ix);
        double fy = smooth(y - iy);
        double top = knot(ix, iy) * (1 - fx) + knot(ix + 1, iy) * fx;
        double low = knot(ix, iy + 1) * (1 - fx) + knot(ix + 1, iy + 1) * fx;
        return top * (1 - fy) + low * fy;
    }

    private static double smooth(double t) {
        return t * t * (3 - 2 * t);
    }

    private double knot(int x, int y) {
        long h = seed ^ (x * 0x9E3779B97F4A7C15L) ^ (y * 0xC2B2AE3D27D4EB4FL);
        h = (h ^ (h >>> 29)) * 0xBF58476D1CE4E5B9L;
        return ((h ^ (h >>> 32)) & 0xFFFF) / 65535.0;
    }
}
