package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.LinearGradientPaint;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** Two pages of a newspaper, with pictures of people on some. */
final class Newspaper extends Prop {

    private static final double COLUMN = 84;
    private static final double PICTURE = 50;
    private static final float[] SKYLINE = {0, 0.55f, 0.6f, 1};
    private static final Color[] SKY_AND_STREET = {
        new Color(150, 165, 180), new Color(205, 205, 200), new Color(90, 95, 80), new Color(120, 115, 90)
    };

    Newspaper(Draws draws) {
        super(draws, d -> new Size(560, 400, 0.4, 0));
    }

    @Override
    public String name() {
        return "newspaper";
    }

    @Override
    public double height(double u, double v) {
        double fold = 1.2 * Math.max(0, 1 - Math.abs(v) / 6);
        return size.height() + fold + 1.5 * Noise.rough(u * 0.012, v * 0.012, seed, 2);
    }

    @Override
    public void paint(Graphics2D g) {
        cover(g, new Color(222, 218, 206));
        for (int column = 0; column < 6; column++) {
            double y = top() + 14;
            while (y < halfWidth() - 8) {
                y = block(g, left() + 12 + column * 91, y);
            }
        }
    }

    /** @return where the next begins */
    private double block(Graphics2D g, double x, double y) {
        g.setColor(new Color(45, 44, 44));
        double lot = draws.share();
        if (lot < 0.12) {
            Lettering.SERIF_BOLD.fit(g, Words.sentence(draws, 3), 8, x, y + 7, COLUMN);
            return y + 13;
        }
        if (lot < 0.17) {
            if (draws.coin()) {
                Portrait.grey(draws).paint(g, x, y, COLUMN, PICTURE);
            } else {
                town(g, x, y);
            }
            return y + PICTURE + 5;
        }
        int lines = 4 + draws.below(10);
        for (int i = 0; i < lines; i++) {
            Lettering.SERIF.fit(g, Words.sentence(draws, 9), 3, x, y + i * 3.7 + 3, COLUMN);
        }
        return y + lines * 3.7 + 2.5;
    }

    private void town(Graphics2D g, double x, double y) {
        g.setPaint(new LinearGradientPaint(
                new Point2D.Double(x, y), new Point2D.Double(x + 14, y + PICTURE), SKYLINE, SKY_AND_STREET));
        g.fill(new Rectangle2D.Double(x, y, COLUMN, PICTURE));
        g.setColor(new Color(80, 75, 72));
        for (int i = 0; i < 6; i++) {
            double tall = draws.between(8, 24);
            g.fill(new Rectangle2D.Double(x + 5 + i * 12, y + 32 - tall, draws.between(6, 12), tall));
        }
    }
}
