package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;

final class Key extends Prop {

    Key(Draws draws) {
        super(draws, d -> new Size(58, 24, 2.4, 0.7));
    }

    @Override
    public String name() {
        return "key";
    }

    @Override
    public double height(double u, double v) {
        double bow = Math.abs(Distances.length(u + 18, v) - 7) - 4.2;
        double outside = Math.min(bow, Distances.roundedBox(u - 8, v, 20, 3, 1));
        double x = u - left();
        if (x > 38 && x < 56) {
            double tooth = 3.2 * Noise.point((int) (x / 2.4), 0, seed) + 1.2;
            outside = Math.min(outside, Distances.roundedBox(u - 17, v - 4, 8, tooth, 0.3));
        }
        return outside > 0 ? Double.NaN : size.height() - 0.5 * Curves.step(-0.6, 0, outside);
    }

    @Override
    public void paint(Graphics2D g) {
        cover(g, new Color(165, 160, 145));
    }
}
