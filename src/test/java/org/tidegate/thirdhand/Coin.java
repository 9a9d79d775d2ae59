package org.tidegate.thirdhand;

/** A coin, or some of one kind on each other. */
final class Coin extends Prop {

    private static final Rgb COPPER = new Rgb(0.45, 0.22, 0.12);
    private static final Rgb BRASS = new Rgb(0.55, 0.42, 0.2);
    private static final Rgb NICKEL = new Rgb(0.5, 0.48, 0.45);

    private final boolean stack;

    Coin(Draws draws, boolean stack) {
        super(draws, d -> {
            double across = d.between(17, 27);
            return new Size(across, across, stack ? 6 : 2, 0.55);
        });
        this.stack = stack;
    }

    @Override
    public String name() {
        return stack ? "coins stack" : "coin";
    }

    @Override
    public double height(double u, double v) {
        double r = Distances.length(u, v);
        double radius = halfLength();
        if (r > radius) {
            return Double.NaN;
        }
        double rim = r > radius - 1 ? 0.15 : 0;
        double relief = r < radius * 0.75 ? 0.25 * Curves.step(0.5, 0.6, Noise.rough(u * 0.35, v * 0.35, seed, 3)) : 0;
        return size.height() - 0.2 + rim + relief - 0.3 * Curves.step(radius - 0.4, radius, r);
    }

    @Override
    public Rgb finish(double u, double v, Rgb painted) {
        return metal(Distances.length(u, v) < halfLength() * 0.72).times(0.8 + 0.3 * Noise.at(u * 0.7, v * 0.7, seed));
    }

    /** Copper, or brass and nickel one within the other. */
    private Rgb metal(boolean inner) {
        if (seed % 3 == 0) {
            return COPPER;
        }
        return inner != even() ? BRASS : NICKEL;
    }
}
