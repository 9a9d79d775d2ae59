package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.RoundRectangle2D;

/** Another phone, with its dark screen up or its back. */
final class Handset extends Prop {

    private static final double CORNER = 9;

    Handset(Draws draws) {
        super(draws, d -> new Size(d.between(140, 165), d.between(68, 78), 8, 0.97));
    }

    @Override
    public String name() {
        return "phone";
    }

    @Override
    public double height(double u, double v) {
        double outside = boxed(u, v, CORNER);
        if (outside > 0) {
            return Double.NaN;
        }
        return size.height() - 2 * Math.pow(Curves.clamp(1 + outside / 2, 0, 1), 2);
    }

    @Override
    public void paint(Graphics2D g) {
        cover(g, new Color(14, 14, 16));
        if (even()) {
            back(g);
        }
    }

    private void back(Graphics2D g) {
        g.setColor(second);
        g.fill(new RoundRectangle2D.Double(left(), top(), size.length(), size.width(), 2 * CORNER, 2 * CORNER));
        g.setColor(new Color(15, 15, 18));
        g.fill(new RoundRectangle2D.Double(left() + 5, top() + 5, 30, 28, 8, 8));
        g.setColor(new Color(50, 55, 70));
        g.fill(new Ellipse2D.Double(left() + 8, top() + 8, 11, 11));
        g.fill(new Ellipse2D.Double(left() + 21, top() + 17, 11, 11));
    }
}
