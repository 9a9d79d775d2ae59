package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;

/** The foil a cassette comes in. */
final class Pouch extends Prop {

    private static final double SEAM = 6;

    Pouch(Draws draws) {
        super(draws, d -> new Size(d.between(90, 130), d.between(60, 75), 2.5, 0.8));
    }

    @Override
    public String name() {
        return "pouch";
    }

    @Override
    public double height(double u, double v) {
        if (boxed(u, v, 0.5) > 0) {
            return Double.NaN;
        }
        if (Math.min(halfLength() - Math.abs(u), halfWidth() - Math.abs(v)) < SEAM) {
            return 0.6 + 0.12 * Math.sin(u * 5) * Math.sin(v * 5);
        }
        double creases = Math.abs(Noise.rough(u * 0.05, v * 0.05, seed, 3) - 0.5) * 2;
        return 0.8 + 3.2 * creases + Noise.rough(u * 0.2, v * 0.2, seed, 2);
    }

    @Override
    public void paint(Graphics2D g) {
        cover(g, seed % 3 == 0 ? Inks.PAPER : new Color(168, 170, 174));
        g.setColor(Inks.faded(first.darker(), 0.9));
        Lettering.BOLD.write(g, Words.name(draws, 3) + " Test", 7, left() + 12, top() + 18);
        double width = Math.min(size.length() - 24, 80);
        for (int i = 0; i < 4; i++) {
            Lettering.PLAIN.fit(g, Words.sentence(draws, 6), 2.6, left() + 12, top() + 26 + i * 5, width);
        }
    }
}
