package org.tidegate.otherhand;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Printed patterns: matrix and bar codes, guilloche lines. */
final class Patterns {

    private Patterns() {}

    static void matrix(Graphics2D g, double x, double y, double size, Color ink, Draw draw) {
        int cells = 14;
        double cell = size / cells;
        g.setColor(ink);
        for (int i = 0; i < cells; i++) {
            for (int j = 0; j < cells; j++) {
                if (i == 0 || j == cells - 1 || draw.chance(0.45)) {
                    g.fill(new Rectangle2D.Double(x + i * cell, y + j * cell, cell, cell));
                }
            }
        }
    }

    static void bars(Graphics2D g, double x, double y, double w, double h, Color ink, Draw draw) {
        g.setColor(ink);
        for (double at = x; at < x + w; ) {
            double bar = draw.oneOf(0.3, 0.3, 0.6, 0.9);
            g.fill(new Rectangle2D.Double(at, y, bar, h));
            at += bar + draw.oneOf(0.3, 0.3, 0.6, 0.9);
        }
    }

    /** Fine waves such as security print has. */
    static void guilloche(Graphics2D g, double w, double h, Color ink, Draw draw) {
        g.setColor(ink);
        g.setStroke(new BasicStroke((float) draw.between(0.12, 0.3)));
        double wave = draw.between(8, 26);
        double high = draw.between(1.5, 7);
        double step = draw.between(0.9, 2.4);
        double drift = draw.between(-0.25, 0.25);
        for (double y = -high; y < h + high; y += step) {
            Path2D line = new Path2D.Double();
            line.moveTo(0, y);
            for (double x = 0; x <= w; x += 1.5) {
                line.lineTo(x, y + high * Math.sin(2 * Math.PI * x / wave + drift * y));
            }
            g.draw(line);
        }
    }

    /** A round hologram with rays of changing colour. */
    static void hologram(Graphics2D g, double x, double y, double radius, Draw draw) {
        int rays = 24;
        for (int i = 0; i < rays; i++) {
            Color colour = Color.getHSBColor((float) draw.between(0, 1), 0.35f, 0.95f);
            g.setColor(Light.faint(colour, 0.45));
            g.fill(new java.awt.geom.Arc2D.Double(
                    x - radius,
                    y - radius,
                    2 * radius,
                    2 * radius,
                    i * 360.0 / rays,
                    360.0 / rays,
                    java.awt.geom.Arc2D.PIE));
        }
    }
}
