package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;

/** The page above a passport's data page: small print, or stamps. */
record OppositePage(Draws draws, SecurityPrint background, Color ink) {

    void paint(Graphics2D g) {
        background.paint(g, draws, DocumentKind.OPEN_PASSPORT.width, DocumentKind.OPEN_PASSPORT.height);
        if (draws.chance(0.5)) {
            smallPrint(g);
        } else {
            g.setColor(Inks.faded(Inks.hsv(draws.share(), 0.7, 0.5), 0.55));
            g.setStroke(Marks.line(0.8));
            for (int i = 0; i < 3; i++) {
                stamp(g);
            }
        }
    }

    private void smallPrint(Graphics2D g) {
        g.setColor(Inks.faded(ink, 0.7));
        for (int i = 0; i < 9; i++) {
            Lettering.SERIF.fit(g, Words.sentence(draws, 8), 2.6, 10, 15 + i * 7, 100);
        }
    }

    private void stamp(Graphics2D g) {
        AffineTransform before = g.getTransform();
        g.translate(draws.between(20, 100), draws.between(20, 65));
        g.rotate(draws.between(-0.5, 0.5));
        g.draw(new Ellipse2D.Double(-16, -11, 32, 22));
        Lettering.BOLD.write(g, Words.day(draws), 3.6, -11, 1);
        g.setTransform(before);
    }
}
