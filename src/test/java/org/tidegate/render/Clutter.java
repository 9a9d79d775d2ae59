package org.tidegate.render;

import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;

/** What else lies on the table of a test: pen, buffer tube, printed leaflet, foil pouch. */
final class Clutter {

    private static final Color PRINT = new Color(70, 72, 80);

    private Clutter() {}

    static BufferedImage any(Draws d) {
        return switch (d.random().nextInt(4)) {
            case 0 -> pen(d);
            case 1 -> tube(d);
            case 2 -> leaflet(d);
            default -> pouch(d);
        };
    }

    private static BufferedImage pen(Draws d) {
        Color colour = new Color(
                d.random().nextInt(220), d.random().nextInt(220), d.random().nextInt(220));
        Paint p = new Paint(140, 9);
        p.block(0, 3.6, 12, 1.8, 0.9, Paint.shade(colour, 0.5));
        p.block(10, 0.5, 128, 8, 4, colour);
        p.block(14, 2, 120, 1.4, 0.7, Paint.shade(colour, 1.25));
        p.block(86, 0.2, 42, 2.2, 1, new Color(190, 192, 198));
        return p.sheet();
    }

    private static BufferedImage tube(Draws d) {
        Paint p = new Paint(62, 12);
        p.block(6, 0.5, 50, 11, 4, new Color(238, 240, 244, 150));
        p.block(10, 3, 24, 6, 3, new Color(210, 222, 236, 160));
        p.fill(new Ellipse2D.Double(0, 2.5, 12, 7), new Color(200, d.random().nextInt(200), 90));
        return p.sheet();
    }

    /** Lines of print without a portrait: a page, but nobody's. */
    private static BufferedImage leaflet(Draws d) {
        double w = d.in(60, 100);
        double h = d.in(80, 140);
        Paint p = new Paint(w, h);
        p.block(0, 0, w, h, 0.1, new Color(250, 250, 248));
        for (double y = 6; y < h - 6; y += d.in(3, 5)) {
            p.print("STEPS".repeat((int) (w / 9)).substring(0, (int) (w / 2.6)), 5, y, 1.4, 0.13, PRINT);
        }
        return p.sheet();
    }

    private static BufferedImage pouch(Draws d) {
        double grey = d.in(150, 225);
        Color foil = new Color((int) grey, (int) grey, (int) (grey * 1.02));
        Paint p = new Paint(120, 70);
        p.block(0, 0, 120, 70, 0.5, Paint.shade(foil, 0.9));
        p.block(4, 4, 112, 62, 0.5, foil);
        for (int i = 0; i < 6; i++) {
            p.block(8 + 18 * i, 6, 1.2, 58, 0.5, Paint.shade(foil, d.in(0.85, 1.1)));
        }
        p.print("SKERRY-20", 30, 28, 6, 0.14, new Color(40, 70, 120));
        return p.sheet();
    }
}
