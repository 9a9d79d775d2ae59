package org.tidegate.thirdhand;

/** Polished stone. */
final class Stones {

    private static final Rgb VEIN = new Rgb(0.2, 0.2, 0.21);

    private Stones() {}

    static Surface marble(Swatch s, double x, double y) {
        double warp = s.rough(x * 0.012, y * 0.012, 0, 4) * 5;
        double broad = Math.abs(s.rough(x * 0.02 + warp, y * 0.02 - warp, 3, 5) - 0.5);
        double fine = Math.abs(s.rough(x * 0.05 + warp, y * 0.05, 8, 4) - 0.5);
        double cloud = s.rough(x * 0.01, y * 0.01, 4, 3);
        double dark = Math.exp(-broad * 40) * 0.6 + Math.exp(-fine * 60) * 0.25 + 0.25 * cloud;
        return Surface.flat(s.first().mix(VEIN, Curves.clamp(dark * 0.8, 0, 1)), 0.75);
    }

    static Surface granite(Swatch s, double x, double y) {
        double patch = Curves.step(0.45, 0.6, s.rough(x * 0.8, y * 0.8, 0, 3));
        double grain = s.noise(x * 2.2, y * 2.2, 4);
        boolean light = grain > 0.75;
        Rgb colour = s.first().mix(light ? s.third() : s.second(), light ? patch * 0.8 : patch);
        return Surface.flat(colour.times(grain < 0.2 ? 0.35 : 1), 0.6);
    }
}
