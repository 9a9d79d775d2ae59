package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;

/** What documents have in common. */
final class CardParts {

    private static final Color OCR_INK = new Color(20, 20, 22);
    /** OCR-B size 1 (ISO 1073-2), near enough with a common mono-spaced font, mm. */
    private static final double OCR_SIZE = 3.75;

    private CardParts() {}

    /** Contacts of a chip, 12 by 9.6 mm. */
    static void chip(Graphics2D g, double x, double y) {
        g.setPaint(Gradients.along(x, y, x + 12, y + 9, new Color(225, 195, 120), new Color(170, 140, 80)));
        g.fill(new RoundRectangle2D.Double(x, y, 12, 9.6, 2.6, 2.6));
        g.setColor(new Color(90, 70, 40));
        g.setStroke(Marks.line(0.2));
        for (int i = 1; i < 4; i++) {
            double row = y + i * 2.4;
            g.draw(new Line2D.Double(x, row, x + 4, row));
            g.draw(new Line2D.Double(x + 8, row, x + 12, row));
        }
        g.draw(new RoundRectangle2D.Double(x + 4, y + 1.4, 4, 6.8, 1, 1));
    }

    /** Lightens the background below a zone. */
    static void veil(Graphics2D g, Rectangle2D area, int opacity) {
        g.setColor(new Color(255, 255, 255, opacity));
        g.fill(area);
    }

    static void zone(Graphics2D g, List<String> lines, double x, double y, double width, double step) {
        g.setColor(OCR_INK);
        double pitch = width / lines.get(0).length();
        for (int i = 0; i < lines.size(); i++) {
            for (int k = 0; k < lines.get(i).length(); k++) {
                String letter = lines.get(i).substring(k, k + 1);
                Lettering.MONO.fit(g, letter, OCR_SIZE, x + k * pitch, y + i * step, pitch * 0.98);
            }
        }
    }
}
