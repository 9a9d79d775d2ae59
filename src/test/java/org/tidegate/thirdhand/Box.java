package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/** A folding box. */
final class Box extends Prop {

    Box(Draws draws) {
        super(draws, d -> new Size(d.between(90, 150), d.between(50, 75), 18, 0.4));
    }

    @Override
    public String name() {
        return "box";
    }

    @Override
    public double height(double u, double v) {
        return boxed(u, v, 0.4) > 0 ? Double.NaN : size.height() + 0.4 * Noise.at(u * 0.03, v * 0.03, seed);
    }

    @Override
    public void paint(Graphics2D g) {
        cover(g, Inks.PAPER);
        g.setColor(first);
        double band = size.width() * 0.35;
        g.fill(new Rectangle2D.Double(left(), halfWidth() - band, size.length(), band));
        Lettering.BOLD.write(g, Words.name(draws, 3), 11, left() + 8, top() + 18);
        g.setColor(new Color(60, 60, 70));
        String line = Words.sentence(draws, 6);
        Lettering.PLAIN.fit(g, line, 3.4, left() + 8, top() + 26, size.length() - 20);
    }
}
