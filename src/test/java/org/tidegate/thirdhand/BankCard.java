package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A card of ID-1 size (ISO/IEC 7810) that is no identity document. */
final class BankCard extends Prop {

    BankCard(Draws draws) {
        super(draws, d -> new Size(85.6, 54, 0.8, 0.8));
    }

    @Override
    public String name() {
        return "bank card";
    }

    @Override
    public double height(double u, double v) {
        if (boxed(u, v, 3.2) > 0) {
            return Double.NaN;
        }
        boolean embossed = Math.abs(v - 4) < 2 && Math.abs(u) < 34 && Noise.at(u * 1.2, 2, seed) > 0.35;
        return size.height() + (embossed ? 0.35 : 0);
    }

    @Override
    public void paint(Graphics2D g) {
        g.setPaint(Gradients.along(left(), 0, -left(), -top(), first.darker(), second));
        g.fill(new Rectangle2D.Double(left(), top(), size.length(), size.width()));
        g.setColor(new Color(215, 190, 120));
        g.fill(new RoundRectangle2D.Double(left() + 9, -8, 12, 9.6, 2.5, 2.5));
        g.setColor(Color.WHITE);
        Lettering.BOLD.write(g, Words.name(draws, 2) + " Bank", 5, left() + 6, top() + 10);
        Lettering.MONO.fit(g, number(), 5, left() + 8, 10, 66);
        Lettering.PLAIN.write(g, Words.capitals(draws, 2), 3, left() + 8, 21);
    }

    private String number() {
        return IntStream.range(0, 4).mapToObj(i -> Words.digits(draws, 4)).collect(Collectors.joining(" "));
    }
}
