package org.tidegate.thirdhand;

/** Crumbs and grit, at most one per cell of a lattice. */
record Crumbs(int seed, boolean there) {

    private static final double CELL = 7;
    private static final double SHARE = 0.12;

    Surface over(double x, double y, Surface below) {
        if (!there) {
            return below;
        }
        int ix = (int) Math.floor(x / CELL);
        int iy = (int) Math.floor(y / CELL);
        if (Noise.point(ix, iy, seed + 55) > SHARE) {
            return below;
        }
        double one = Noise.point(ix, iy, seed + 56);
        double other = Noise.point(ix, iy, seed + 57);
        double radius = 0.15 + 0.6 * one * one;
        double away = Distances.length(x - (ix + 0.2 + 0.6 * one) * CELL, y - (iy + 0.2 + 0.6 * other) * CELL) / radius;
        away += 0.6 * (Noise.at(x * 3, y * 3, seed) - 0.5);
        if (away >= 1) {
            return below;
        }
        double light = other < 0.5 ? 0.06 : 0.5;
        double high = 0.7 * radius * Math.sqrt(Math.max(0, 1 - away * away));
        return new Surface(new Rgb(light, light * 0.8, light * 0.55), below.height() + high, 0);
    }
}
