package org.tidegate.render;

import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.util.Random;

/** Paints a cassette from above: body with a raised edge, grip ribs, well, window with rim and membrane, lines, print, handwriting. */
final class CassettePainter {

    private static final Color PRINT = new Color(52, 56, 64);
    private static final Color INK = new Color(28, 38, 110);
    private static final Color MEMBRANE = new Color(247, 244, 243);
    private static final int STEPS = 9;

    private CassettePainter() {}

    static BufferedImage paint(CassetteLook k, Random random) {
        Paint p = new Paint(k.length(), k.width());
        p.block(0, 0, k.length(), k.width(), k.radius(), Paint.shade(k.body(), 0.82));
        p.block(0.35, 0.35, k.length() - 0.7, k.width() - 0.7, k.radius(), k.body());
        for (int i = 0; i < 4; i++) {
            p.block(k.length() - 9 + 1.6 * i, k.width() * 0.25, 0.5, k.width() * 0.5, 0.2, Paint.shade(k.body(), 0.88));
        }
        well(p, k);
        window(p, k);
        print(p, k);
        double room = k.windowFrom() + k.windowLength() + 1.5;
        double size = Math.min(2.6, (k.length() - room - 2) / Math.max(1, StrokeFont.width("00:00", 1)));
        String[] words = k.writing().isEmpty() ? new String[0] : k.writing().split(" ", 3);
        for (int i = 0; i < words.length; i++) {
            p.stroke(StrokeFont.write(words[i], room, k.width() * (0.18 + 0.24 * i), size, 0.5, random), 0.36, INK);
        }
        return p.sheet();
    }

    private static void well(Paint p, CassetteLook k) {
        double w = k.wellSize() * (k.well() == CassetteLook.Well.OVAL ? 1.25 : 1);
        double h = k.wellSize();
        disc(p, k, w, h, 0, 0.76);
        disc(p, k, w - 1.4, h - 1.4, 0, 0.9);
        disc(p, k, w - 3, h - 3, k.well() == CassetteLook.Well.DROP ? 0.5 : 0, 0.8);
    }

    private static void disc(Paint p, CassetteLook k, double w, double h, double aside, double shade) {
        p.fill(
                new Ellipse2D.Double(k.wellAt() - w / 2 + aside, k.width() / 2 - h / 2, w, h),
                Paint.shade(k.body(), shade));
    }

    private static void window(Paint p, CassetteLook k) {
        double top = (k.width() - k.windowWidth()) / 2;
        p.block(
                k.windowFrom() - k.rim(),
                top - k.rim(),
                k.windowLength() + 2 * k.rim(),
                k.windowWidth() + 2 * k.rim(),
                0.8,
                Paint.shade(k.body(), 0.78));
        p.block(k.windowFrom(), top, k.windowLength(), k.windowWidth(), 0.3, MEMBRANE);
        line(p, k, k.at()[0], k.t());
        line(p, k, k.at()[1], k.c());
    }

    /** Strongest in its middle, fading over the outer thirds. */
    private static void line(Paint p, CassetteLook k, double at, double strength) {
        double top = (k.width() - k.windowWidth()) / 2;
        double centre = k.windowFrom() + at * k.windowLength();
        double step = k.lineWidth() / STEPS;
        for (int i = 0; i < STEPS && strength > 0; i++) {
            double off = Math.abs(i - (STEPS - 1) / 2.0) / (STEPS / 2.0);
            double s = strength * Math.min(1, 2.2 * (1 - off) + 0.15);
            p.block(centre + (i - STEPS / 2.0) * step, top, step + 0.01, k.windowWidth(), 0, dyed(k.dye(), s));
        }
    }

    private static Color dyed(Color dye, double strength) {
        return new Color(
                (int) Math.round(MEMBRANE.getRed() * (1 - strength * dye.getRed() / 255)),
                (int) Math.round(MEMBRANE.getGreen() * (1 - strength * dye.getGreen() / 255)),
                (int) Math.round(MEMBRANE.getBlue() * (1 - strength * dye.getBlue() / 255)));
    }

    private static void print(Paint p, CassetteLook k) {
        if (k.letters()) {
            double above = (k.width() - k.windowWidth()) / 2 - k.rim() - 2.6;
            p.print("T", k.windowFrom() + k.at()[0] * k.windowLength() - 0.6, above, 1.8, 0.14, PRINT);
            p.print("C", k.windowFrom() + k.at()[1] * k.windowLength() - 0.6, above, 1.8, 0.14, PRINT);
            p.print("S", k.wellAt() - 0.6, k.width() / 2 + k.wellSize() / 2 + 0.8, 1.6, 0.14, PRINT);
        }
        p.print(k.label(), k.windowFrom() - 1, k.width() / 2 + k.windowWidth() / 2 + k.rim() + 1.2, 1.5, 0.16, PRINT);
    }
}
