package org.tidegate.render;

import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.Locale;

/** Paints an invented identity document: header, portrait, print, machine-readable zone. */
final class CardPainter {

    private static final Color PRINT = new Color(30, 32, 40);
    private static final Color SMALL = new Color(110, 112, 124);
    private static final String[] LABELS = {"SURNAME", "GIVEN NAMES", "DATE OF BIRTH", "DOCUMENT"};

    private CardPainter() {}

    static BufferedImage paint(CardLook c) {
        double w = c.format().width;
        double h = c.format().height;
        Paint p = new Paint(w, h);
        p.block(0, 0, w, h, 3.18, Paint.shade(c.paper(), 0.9));
        p.block(0.2, 0.2, w - 0.4, h - 0.4, 3.1, c.paper());
        guilloche(p, c, w, h);
        boolean plain = c.header().equals(c.paper());
        p.block(0.2, 0.2, w - 0.4, 8, 3, c.header());
        p.print(c.title(), 5, 2.4, 3.2, 0.14, plain ? PRINT : Color.WHITE);
        double portraitWidth = w * 0.27;
        double portraitX = c.portraitLeft() ? 5 : w - 5 - portraitWidth;
        portrait(p, c.skin(), portraitX, 12, portraitWidth, portraitWidth * 1.26);
        double textX = c.portraitLeft() ? portraitX + portraitWidth + 5 : 5;
        double step = c.format() == CardLook.Format.ID_1 ? 9 : 11;
        for (int i = 0; i < c.lines().size(); i++) {
            p.print(LABELS[i], textX, 12 + i * step, 1.3, 0.12, SMALL);
            p.print(c.lines().get(i).toUpperCase(Locale.ROOT), textX, 14.6 + i * step, 2.6, 0.15, PRINT);
        }
        zone(p, c, w, h);
        return p.sheet();
    }

    private static void zone(Paint p, CardLook c, double w, double h) {
        if (c.zone().isEmpty()) {
            return;
        }
        p.block(0.3, h - 23.2, w - 0.6, 23, 3, new Color(250, 250, 250));
        for (int i = 0; i < c.zone().size(); i++) {
            p.print(c.zone().get(i), 4, h - 18 + i * 8, 2.7, 0.13, PRINT);
        }
    }

    /** Faint wavy security print. */
    private static void guilloche(Paint p, CardLook c, double w, double h) {
        for (double y = 10; y < h - 2; y += 2.2) {
            Path2D wave = new Path2D.Double();
            wave.moveTo(2, y);
            for (double x = 2; x < w - 2; x += 1) {
                wave.lineTo(x, y + 0.8 * Math.sin(x / 3 + y));
            }
            p.stroke(wave, 0.12, Paint.shade(c.paper(), 0.95));
        }
    }

    private static void portrait(Paint p, CardLook.Skin s, double x, double y, double w, double h) {
        p.block(x, y, w, h, 0.2, new Color(206, 214, 224));
        p.block(x + 0.12 * w, y + 0.76 * h, 0.76 * w, 0.24 * h, 0.1 * w, s.clothes());
        p.block(x + 0.4 * w, y + 0.62 * h, 0.2 * w, 0.2 * h, 1, Paint.shade(s.face(), 0.9));
        oval(p, x + 0.5 * w, y + 0.4 * h, 0.29 * w, 0.31 * h, s.hair());
        oval(p, x + 0.5 * w, y + 0.45 * h, 0.23 * w, 0.26 * h, s.face());
        for (int side = -1; side <= 1; side += 2) {
            oval(p, x + (0.5 + side * 0.1) * w, y + 0.42 * h, 0.025 * w, 0.015 * h, PRINT);
        }
        oval(p, x + 0.5 * w, y + 0.58 * h, 0.07 * w, 0.012 * h, new Color(150, 60, 60));
    }

    private static void oval(Paint p, double cx, double cy, double rx, double ry, Color colour) {
        p.fill(new Ellipse2D.Double(cx - rx, cy - ry, 2 * rx, 2 * ry), colour);
    }
}
