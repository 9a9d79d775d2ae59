package org.tidegate.thirdhand;

/** A finger that comes in from beyond the picture; u runs from its tip to the hand. */
final class Finger implements Thing {

    private static final double LENGTH = 300;
    /** The first joint, from the tip. */
    private static final double JOINT = 27;

    private final int seed;
    private final double width;
    private final Skin skin;

    Finger(Draws draws, Skin skin) {
        seed = draws.noiseSeed();
        width = draws.between(14, 18);
        this.skin = skin;
    }

    double width() {
        return width;
    }

    @Override
    public double halfLength() {
        return LENGTH / 2;
    }

    /** The hand is broader. */
    @Override
    public double halfWidth() {
        return 2 * width;
    }

    @Override
    public double gloss(double u, double v) {
        return 0.16;
    }

    @Override
    public String name() {
        return "finger";
    }

    @Override
    public double height(double u, double v) {
        double x = u + LENGTH / 2;
        double beyondTip = x < width / 2 ? width / 2 - x : 0;
        double away = Distances.length(beyondTip, v) / radius(x);
        if (away > 1) {
            return Double.NaN;
        }
        double dome = Math.sqrt(1 - away * away);
        double creases = 0.12 * Math.sin(x * 2.2) * Curves.bump(x - JOINT, 4.5);
        double nail = nail(x, v) < 0 ? 0.25 : 0;
        double rise = Math.min(9, Math.max(0, x - 30) * 0.08) + 9 * Curves.step(60, 110, x) * dome;
        return width * 0.72 * (0.35 + 0.65 * dome) + nail + creases + 0.1 * Noise.at(u * 1.3, v * 1.3, seed) + rise;
    }

    private double radius(double x) {
        double slimTip = 0.1 * Curves.step(0.5, 0, x / 30);
        double knuckle = x < 60 ? 0.05 * Math.cos((x - 28) / 9) : 0;
        return width / 2 * (1 - slimTip + knuckle) * (1 + 1.5 * Curves.step(55, 105, x));
    }

    private double nail(double x, double v) {
        return Distances.roundedBox(x - width * 0.36, v, width * 0.3, width * 0.3, width * 0.22);
    }

    @Override
    public Rgb finish(double u, double v, Rgb painted) {
        double x = u + LENGTH / 2;
        double wave = 0.5 + 0.5 * Math.sin(x * 2.4 + Noise.at(v * 0.4, 1, seed) * 3);
        double light = 1 - 0.25 * Curves.bump(x - JOINT, 4) * Math.pow(wave, 4);
        Rgb flesh = skin.at(u, v, seed);
        double nail = nail(x, v);
        if (nail < 0) {
            double t = Curves.step(0, -0.6, nail);
            return flesh.times(1, 1 + 0.12 * t, 1 + 0.15 * t).times(light * 1.04);
        }
        return flesh.times(nail < 0.6 ? light * 0.82 : light);
    }
}
