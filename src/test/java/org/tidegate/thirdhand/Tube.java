package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/** A buffer tube with a nozzle, half full. */
final class Tube extends Prop {

    Tube(Draws draws) {
        super(draws, d -> new Size(d.between(55, 70), d.between(10, 14), 10, 0.85));
    }

    @Override
    public String name() {
        return "tube";
    }

    @Override
    public double height(double u, double v) {
        double x = u - left();
        double part = x < 10 ? 0.3 + 0.05 * x : x < 16 ? 1 : 0.8;
        double radius = size.width() / 2 * part * taper(size.length() - x, 5);
        return round(radius, v, size.width() / 2);
    }

    @Override
    public Rgb finish(double u, double v, Rgb painted) {
        double x = u - left();
        return x > 18 && x < size.length() * 0.6 ? painted.times(0.8) : painted;
    }

    @Override
    public void paint(Graphics2D g) {
        cover(g, new Color(236, 240, 242, 190));
        g.setColor(even() ? Inks.PAPER : first);
        g.fill(new Rectangle2D.Double(left(), top(), 16, size.width()));
    }
}
