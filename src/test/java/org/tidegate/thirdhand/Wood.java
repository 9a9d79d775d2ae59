package org.tidegate.thirdhand;

/** Planks along x. */
record Wood(Swatch swatch, double plank) implements Support.Pattern {

    @Override
    public Surface at(double x, double y) {
        double row = Math.floor(y / plank);
        double own = Noise.point((int) row, 3, swatch.seed());
        double grainY = y + own * 400;
        double warp = swatch.rough(x * 0.006 + own * 9, grainY * 0.03, 0, 3) * 40;
        double grain = swatch.rough(x * 0.012, (grainY + warp) * 0.35, 5, 3);
        double ring = 0.5 + 0.5 * Math.sin((grainY * 0.6 + warp * 1.2) * 0.5);
        double fine = swatch.noise(x * 0.12, grainY * 4, 9);
        double tone = 0.45 * grain + 0.3 * ring + 0.25 * fine + (own - 0.5) * 0.4;
        double pore = Curves.step(0.78, 0.86, swatch.noise(x * 0.15, grainY * 3, 19));
        Rgb colour =
                swatch.first().mix(swatch.second(), Curves.clamp(tone, 0, 1)).times(1 - 0.3 * pore);
        return Surface.flat(colour.times(gap(y / plank - row)), 0.15 + 0.45 * swatch.extra());
    }

    /** Dark between planks. */
    private double gap(double across) {
        double edge = Math.min(across, 1 - across) * plank;
        return edge < 0.5 && swatch.size() > 0.3 ? 0.25 + edge * 1.2 : 1;
    }
}
