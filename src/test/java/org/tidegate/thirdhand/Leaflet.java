package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** Instructions for use, with drawings that look like what the picture is about. */
final class Leaflet extends Prop {

    private static final double COLUMN = 68;

    Leaflet(Draws draws) {
        super(draws, d -> new Size(d.between(210, 420), d.between(148, 297), 0.3, 0.08));
    }

    @Override
    public String name() {
        return "leaflet";
    }

    /** Folded along v in thirds and along u in the middle. */
    @Override
    public double height(double u, double v) {
        double folds =
                1.2 * Math.max(0, 1 - Math.abs(Math.abs(u) - size.length() / 6) / 5) + Math.max(0, 1 - Math.abs(v) / 5);
        return size.height() + folds + Noise.rough(u * 0.02, v * 0.02, seed, 2);
    }

    @Override
    public void paint(Graphics2D g) {
        cover(g, new Color(243, 242, 238));
        int columns = Math.max(2, (int) (size.length() / COLUMN));
        double width = (size.length() - 10) / columns;
        for (int i = 0; i < columns; i++) {
            double y = top() + 8;
            while (y < halfWidth() - 10) {
                y = block(g, left() + 7 + i * width, y, width - 8);
            }
        }
    }

    /** @return where the next begins */
    private double block(Graphics2D g, double x, double y, double width) {
        g.setColor(even() ? new Color(45, 45, 50) : first.darker());
        double lot = draws.share();
        if (lot < 0.18) {
            String heading = (1 + draws.below(9)) + ". " + Words.name(draws, 3);
            Lettering.BOLD.write(g, heading, 4, x, y + 4);
            return y + 8;
        }
        if (lot < 0.4) {
            figure(g, x, y, width);
            return y + 29;
        }
        int lines = 2 + draws.below(5);
        for (int i = 0; i < lines; i++) {
            Lettering.PLAIN.fit(g, Words.sentence(draws, 7), 2.3, x, y + i * 3.3 + 2.2, width);
        }
        return y + lines * 3.3 + 2;
    }

    private void figure(Graphics2D g, double x, double y, double w) {
        g.setStroke(Marks.line(0.35));
        g.draw(new RoundRectangle2D.Double(x, y, w, 26, 3, 3));
        switch (draws.below(3)) {
            case 0 -> cassette(g, x + w * 0.2, y, w);
            case 1 -> bottle(g, x + w * 0.4, y, w);
            default -> {
                g.draw(new Ellipse2D.Double(x + w * 0.35, y + 4, 16, 18));
                g.draw(new Line2D.Double(x + w * 0.5, y + 14, x + w * 0.9, y + 20));
            }
        }
    }

    private static void cassette(Graphics2D g, double x, double y, double w) {
        g.draw(new RoundRectangle2D.Double(x, y + 9, w * 0.6, 8, 2, 2));
        g.draw(new Rectangle2D.Double(x + w * 0.15, y + 11.5, w * 0.15, 3));
        g.draw(new Ellipse2D.Double(x + w * 0.42, y + 11, 4, 4));
        g.draw(new Line2D.Double(x + w * 0.2, y + 11.5, x + w * 0.2, y + 14.5));
    }

    private static void bottle(Graphics2D g, double x, double y, double w) {
        g.draw(new RoundRectangle2D.Double(x, y + 4, 7, 18, 5, 5));
        g.draw(new Line2D.Double(x, y + 12, x + 7, y + 12));
        g.draw(new Line2D.Double(x + w * 0.2, y + 2, x + w * 0.4, y + 22));
    }
}
