package org.tidegate.thirdhand;

/** Of one person. */
record Skin(double saturation, double value) {

    static Skin drawn(Draws draws) {
        double dark = Math.pow(draws.share(), 1.7);
        return new Skin(0.3 + 0.2 * dark, 0.93 - 0.5 * dark);
    }

    /** Uneven as skin is. */
    Rgb at(double u, double v, int seed) {
        double blotch = Noise.rough(u * 0.25, v * 0.25, seed, 3);
        double pore = Noise.at(u * 2.5, v * 2.5, seed);
        double light = Math.min(1, value * (0.93 + 0.1 * blotch + 0.03 * pore));
        return Rgb.ofHsv(0.035 + 0.025 * blotch, saturation * (1.12 - 0.25 * blotch), light);
    }
}
