package org.tidegate.thirdhand;

import java.awt.Graphics2D;

/** A cup of coffee from above. */
final class Cup extends Prop {

    private static final double WALL = 4;
    private static final Rgb COFFEE = new Rgb(0.05, 0.022, 0.012);

    Cup(Draws draws) {
        super(draws, d -> {
            double across = d.between(72, 92);
            return new Size(across, across, 34, 0.8);
        });
    }

    @Override
    public String name() {
        return "cup";
    }

    @Override
    public double height(double u, double v) {
        double r = Distances.length(u, v);
        double radius = halfLength();
        if (r > radius) {
            return Double.NaN;
        }
        if (r <= radius - WALL) {
            return size.height() - 9;
        }
        return size.height() + 1.5 * Math.sqrt(Math.max(0, 1 - Math.pow((r - radius + 2) / 2, 2)));
    }

    @Override
    public Rgb finish(double u, double v, Rgb painted) {
        return Distances.length(u, v) < halfLength() - WALL - 0.2 ? COFFEE : painted;
    }

    @Override
    public void paint(Graphics2D g) {
        cover(g, second);
    }
}
