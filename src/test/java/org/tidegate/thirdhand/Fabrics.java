package org.tidegate.thirdhand;

/** Cloth and towels. */
final class Fabrics {

    /** How much of the third colour there is, 0 to 1. */
    interface Dye {
        double at(double x, double y);
    }

    private Fabrics() {}

    static Support.Pattern cloth(Swatch s, Dye dye) {
        return woven(s, dye, 0.7, 2.2);
    }

    static Support.Pattern bedCover(Swatch s) {
        return woven(s, flowers(s), 1.2, 9);
    }

    private static Support.Pattern woven(Swatch s, Dye dye, double thread, double folds) {
        return (x, y) -> {
            boolean over = (Math.floor(x / thread) + Math.floor(y / thread)) % 2 == 0;
            double wave = Math.sin((over ? x : y) * 2 * Math.PI / thread);
            double weave = wave * wave;
            double fluff = s.noise(x * 3, y * 0.8, 0) * 0.3 + s.noise(x * 0.8, y * 3, 1) * 0.3;
            Rgb colour = s.first().mix(s.third(), dye.at(x, y)).times(0.62 + 0.25 * weave + fluff * 0.4);
            double fold = s.rough(x * 0.015, y * 0.015, 0, 3) * folds * (0.4 + s.extra());
            return new Surface(colour, fold + 0.06 * weave, 0);
        };
    }

    static Dye checks(Swatch s) {
        double square = 10 + 18 * s.size();
        return (x, y) -> (even(x / square) ? 0.5 : 0) + (even(y / square) ? 0.5 : 0);
    }

    private static boolean even(double value) {
        return ((int) Math.floor(value) & 1) == 0;
    }

    static Dye stripes(Swatch s) {
        double period = 12 + 40 * s.size();
        return (x, y) -> {
            double at = Curves.cycle(x / period);
            return at < 0.3 ? 1 : at > 0.45 && at < 0.5 ? 0.8 : 0;
        };
    }

    private static Dye flowers(Swatch s) {
        return (x, y) -> {
            double fx = Curves.cycle(x / 40) - 0.5;
            double fy = Curves.cycle(y / 40) - 0.5;
            double r = Distances.length(fx, fy);
            double petals = 0.25 + 0.12 * Math.cos(5 * Math.atan2(fy, fx) + s.size() * 6);
            return r < 0.08 ? 0.2 : r < petals ? 0.85 : 0;
        };
    }

    /** Embossed paper with a sparse print. */
    static Surface towel(Swatch s, double x, double y) {
        double dimple = Distances.length(Curves.cycle(x / 4.5) - 0.5, Curves.cycle(y / 4.5) - 0.5);
        double gx = Curves.cycle(x / 50) - 0.5;
        double gy = Curves.cycle(y / 50) - 0.5;
        boolean printed = Math.abs(Distances.length(gx, gy) - 0.28) < 0.03 || Math.abs(gx) + Math.abs(gy) < 0.1;
        Rgb colour = s.first().mix(s.third(), printed ? 0.7 * s.size() + 0.1 : 0);
        double folds = 3 * s.rough(x * 0.012, y * 0.012, 0, 2) * s.extra();
        double height = 0.35 * Curves.step(0.5, 0.25, dimple) + folds + 0.05 * s.noise(x * 5, y * 5, 0);
        return new Surface(colour.times(0.93 + 0.07 * s.noise(x * 2, y * 2, 0)), height, 0);
    }
}
