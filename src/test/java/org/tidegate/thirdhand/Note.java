package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;

/** A sheet with handwriting. */
final class Note extends Prop {

    private static final Color YELLOW = new Color(250, 235, 140);

    Note(Draws draws) {
        super(draws, d -> new Size(d.between(76, 148), d.between(60, 105), 0.3, 0));
    }

    @Override
    public String name() {
        return "note";
    }

    /** A sheet has no edge of its own: the box is its outline. */
    @Override
    public double height(double u, double v) {
        return size.height() + Noise.rough(u * 0.02, v * 0.02, seed, 2);
    }

    @Override
    public void paint(Graphics2D g) {
        cover(g, seed % 4 == 0 ? YELLOW : Inks.PAPER);
        if (even()) {
            ruled(g);
        }
        g.setColor(Inks.PEN_BLUE);
        for (int i = 0; i < 5 && i * 10 < size.width() - 20; i++) {
            double written = size.length() * draws.between(0.3, 0.8);
            Marks.scrawl(g, draws, left() + 8, top() + 15 + i * 10, written, 5, 0.45);
        }
    }

    private void ruled(Graphics2D g) {
        g.setColor(new Color(150, 170, 210));
        g.setStroke(Marks.line(0.2));
        for (double y = top() + 8; y < -top(); y += 8) {
            g.draw(new Line2D.Double(left(), y, -left(), y));
        }
    }
}
