package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

final class Swab extends Prop {

    private static final double TIP = 18;

    Swab(Draws draws) {
        super(draws, d -> new Size(d.between(130, 150), 6, 5, 0.2));
    }

    @Override
    public String name() {
        return "swab";
    }

    @Override
    public double height(double u, double v) {
        double x = u - left();
        double radius = x < TIP ? 2.6 + 0.3 * Noise.at(u * 2, v * 2, seed) : 1.25;
        return round(radius * taper(x, 3), v, 1.3);
    }

    @Override
    public void paint(Graphics2D g) {
        cover(g, new Color(240, 240, 236));
        if (even()) {
            g.setColor(first);
            g.fill(new Rectangle2D.Double(left() + TIP, top(), size.length(), size.width()));
        }
    }
}
