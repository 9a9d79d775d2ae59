package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

final class Pen extends Prop {

    private static final double TIP = 16;

    Pen(Draws draws) {
        super(draws, d -> {
            double length = d.between(130, 150);
            double width = d.between(8, 11);
            return new Size(length, width, width, 0.6);
        });
    }

    @Override
    public String name() {
        return "pen";
    }

    @Override
    public double height(double u, double v) {
        double x = u - left();
        double tip = x < TIP ? 0.12 + 0.88 * x / TIP : 1;
        return round(size.width() / 2 * tip * (x > size.length() * 0.6 ? 1 : 0.9), v, size.width() / 2);
    }

    @Override
    public void paint(Graphics2D g) {
        cover(g, first);
        g.setColor(new Color(150, 150, 150));
        g.fill(new Rectangle2D.Double(left(), top(), 14, size.width()));
        g.fill(new Rectangle2D.Double(size.length() * 0.1, top(), 2.5, size.width()));
    }
}
