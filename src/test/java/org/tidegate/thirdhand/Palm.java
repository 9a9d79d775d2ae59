package org.tidegate.thirdhand;

/** An open hand that holds the cassette. */
final class Palm implements Thing {

    private final int seed;
    private final Skin skin;
    /** How each finger differs, then how they spread, then the thumb; -1 to 1. */
    private final double[] own = new double[6];

    Palm(Draws draws) {
        seed = draws.noiseSeed();
        skin = Skin.drawn(draws);
        for (int i = 0; i < own.length; i++) {
            own[i] = draws.between(-1, 1);
        }
    }

    @Override
    public double halfLength() {
        return 165;
    }

    @Override
    public double halfWidth() {
        return 110;
    }

    @Override
    public double gloss(double u, double v) {
        return 0.14;
    }

    @Override
    public String name() {
        return "palm";
    }

    @Override
    public double height(double u, double v) {
        double outside = outside(u, v);
        if (outside > 0) {
            return Double.NaN;
        }
        double in = Curves.clamp(-outside / 22, 0, 1);
        double hollow = 3 * Math.exp(-((u + 70) * (u + 70) + v * v) / 900);
        return 26 * Math.sqrt(1 - (1 - in) * (1 - in)) * 0.8 - hollow + 0.15 * Noise.at(u * 0.8, v * 0.8, seed);
    }

    private double outside(double u, double v) {
        double d = Distances.roundedBox(u + 70, v, 58, 46, 30);
        for (int i = 0; i < 4; i++) {
            double root = -34 + i * 22;
            double length = (i == 0 || i == 3 ? 58 : 76) + 4 * own[i];
            double spread = (i - 1.5) * (6 + 3 * own[4]);
            d = Distances.joined(d, Distances.segment(u, v, -25, root, length - 15, root + spread) - 9.2, 5);
        }
        return Distances.joined(d, Distances.segment(u, v, -105, 30, -30 + 6 * own[5], 88) - 11.5, 14);
    }

    @Override
    public Rgb finish(double u, double v, Rgb painted) {
        double veins = 0.08 * Curves.step(0.55, 0.7, Noise.rough(u * 0.6, v * 0.6, seed + 3, 2));
        Rgb flesh = skin.at(u, v, seed);
        return flesh.times(1.02, 1, 1).times(1 - lines(u, v) - joints(u) - veins);
    }

    private double lines(double u, double v) {
        if (u >= -20 || u <= -120) {
            return 0;
        }
        double dark = 0;
        for (int i = 0; i < 3; i++) {
            double bend = 18 * Math.sin((u + 70) * 0.022 + i * 0.9 + own[i]);
            double off = v - (i - 1) * 24 - bend - 0.2 * (u + 70) * (i - 1);
            dark += 0.3 * Math.exp(-off * off / 0.8);
        }
        return dark;
    }

    private static double joints(double u) {
        return 0.22 * (Math.exp(-(u + 2) * (u + 2) / 0.6) + Math.exp(-(u - 26) * (u - 26) / 0.6));
    }
}
