package org.tidegate.thirdhand;

/** Chips of two sizes in cement, one per cell of a lattice, the small ones over the large. */
record Terrazzo(Swatch swatch) implements Support.Pattern {

    private static final double GLOSS = 0.5;

    @Override
    public Surface at(double x, double y) {
        double cell = 5 + 5 * swatch.size();
        Rgb colour = swatch.first().times(0.9 + 0.15 * swatch.noise(x, y, 0));
        colour = chips(x, y, cell, 0, colour);
        return Surface.flat(chips(x, y, cell * 0.45, 1, colour), GLOSS);
    }

    private Rgb chips(double x, double y, double cell, int layer, Rgb below) {
        int ix = (int) Math.floor(x / cell);
        int iy = (int) Math.floor(y / cell);
        Rgb colour = below;
        for (int j = iy - 1; j <= iy + 1; j++) {
            for (int i = ix - 1; i <= ix + 1; i++) {
                colour = chip(x / cell, y / cell, i, j, layer, colour);
            }
        }
        return colour;
    }

    private Rgb chip(double x, double y, int i, int j, int layer, Rgb below) {
        double one = Noise.point(i, j, swatch.seed() + layer);
        double other = Noise.point(i, j, swatch.seed() + 7 + layer);
        double third = Noise.point(i, j, swatch.seed() + 9 + layer);
        double dx = x - (i + one);
        double dy = y - (j + other);
        double ragged = 0.8 + 0.3 * swatch.noise(Math.atan2(dy, dx) * 1.6 + 9, third * 40, 0);
        double radius = (0.12 + 0.33 * third) * ragged;
        if (dx * dx + dy * dy >= radius * radius) {
            return below;
        }
        double hue = third * 7 % 1 * 0.15 + (other > 0.7 ? 0.5 : 0.02);
        return Rgb.ofHsv(hue, 0.1 + 0.4 * one * one, 0.25 + 0.65 * other);
    }
}
