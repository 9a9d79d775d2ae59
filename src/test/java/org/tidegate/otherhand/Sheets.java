package org.tidegate.otherhand;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.LinearGradientPaint;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Flat things that may lie below the cassette and at its side, all larger than A6. */
final class Sheets {

    private Sheets() {}

    static Clutter drawn(Draw draw) {
        return switch (draw.whole(0, 3)) {
            case 0, 1 -> leaflet(draw);
            case 2 -> pouch(draw);
            default -> cloth(draw);
        };
    }

    /** The kit's box, seen from above. */
    static Clutter box(Draw draw) {
        Color face = draw.colour(15, 0xf4f6f8, 0x2f6fb0, 0xd8e8f2, 0x3a9a8a, 0xe8e2f0);
        Color accent = draw.colour(15, 0x1f4f8a, 0xe07a2a, 0x2a8a6a, 0xffffff, 0x8a2a5a);
        double w = draw.between(120, 170);
        double h = draw.between(105, 140);
        return new Clutter(new Rectangle2D.Double(0, 0, w, h), 18, face, (g, light) -> {
            g.setColor(face);
            g.fill(new Rectangle2D.Double(0, 0, w, h));
            g.setColor(accent);
            g.fill(new Rectangle2D.Double(0, h * 0.62, w, h * 0.16));
            Lettering.left(g, "SKERRY-20", 12, 24, 8, Lettering.BOLD);
            Lettering.left(g, "Rapid test", 12, 38, 5, Lettering.PLAIN);
            Lettering.column(g, 12, h * 0.82, w * 0.7, h * 0.13, 3, new Color(0x505058), draw);
        });
    }

    private static Clutter leaflet(Draw draw) {
        double w = draw.oneOf(148.0, 210.0, 210.0);
        double h = w * draw.between(1.2, 1.42);
        Color paper = draw.colour(6, 0xf2f1ec, 0xeeeeee, 0xf4f0e4);
        Color ink = draw.colour(10, 0x3a3a40, 0x2e3c5a, 0x606066);
        double row = draw.between(2.6, 4.2);
        int folds = draw.whole(1, 3);
        return new Clutter(new Rectangle2D.Double(0, 0, w, h), 0.3, paper, (g, light) -> {
            g.setColor(paper);
            g.fill(new Rectangle2D.Double(0, 0, w, h));
            double column = (w - 30) / 2;
            g.setColor(ink);
            Lettering.left(g, "INSTRUCTIONS FOR USE", 12, 17, 4, Lettering.BOLD);
            Lettering.column(g, 12, 26, column, h - 40, row, ink, draw);
            Lettering.column(g, 18 + column, 26, column, h - 40, row, ink, draw);
            for (int i = 1; i <= folds; i++) {
                float y = (float) (h * i / (folds + 1));
                g.setPaint(new LinearGradientPaint(0, y - 9, 0, y + 9, new float[] {0, 0.49f, 0.51f, 1}, new Color[] {
                    Light.faint(Color.WHITE, 0), Light.faint(Color.WHITE, 0.3),
                    Light.faint(Color.BLACK, 0.16), Light.faint(Color.BLACK, 0)
                }));
                g.fill(new Rectangle2D.Double(0, y - 9, w, 18));
            }
        });
    }

    /** The foil pouch with its torn edge, crinkled. */
    private static Clutter pouch(Draw draw) {
        double w = draw.between(150, 190);
        double h = draw.between(105, 120);
        Path2D outline = new Path2D.Double();
        outline.moveTo(0, 0);
        outline.lineTo(w, 0);
        for (double y = 4; y < h; y += 4) {
            outline.lineTo(w + draw.between(-3, 2), y);
        }
        outline.lineTo(w, h);
        outline.lineTo(0, h);
        outline.closePath();
        Color foil = draw.colour(14, 0xb4b8bc, 0xc6c8ca, 0xdfe3e6, 0xa6a49c);
        return new Clutter(outline, 1.5, foil, (g, light) -> {
            g.setColor(foil);
            g.fill(outline);
            for (int i = 0; i < 26; i++) {
                crease(g, w, h, draw);
            }
            g.setColor(Light.faint(new Color(0x1f3f7a), 0.85));
            Lettering.left(g, "SKERRY-20", 20, 30, 7, Lettering.BOLD);
            Lettering.column(g, 20, 40, w * 0.55, 26, 3.4, Light.faint(new Color(0x303038), 0.7), draw);
        });
    }

    private static void crease(Graphics2D g, double w, double h, Draw draw) {
        double x = draw.between(0, w);
        double y = draw.between(0, h);
        double reach = draw.between(8, 34);
        double angle = draw.turn();
        Path2D facet = new Path2D.Double();
        facet.moveTo(x, y);
        facet.lineTo(x + reach * Math.cos(angle), y + reach * Math.sin(angle));
        facet.lineTo(x + reach * 0.7 * Math.cos(angle + 0.5), y + reach * 0.7 * Math.sin(angle + 0.5));
        facet.closePath();
        Color tone = draw.chance(0.5) ? Color.WHITE : Color.BLACK;
        g.setPaint(new GradientPaint(
                (float) x,
                (float) y,
                Light.faint(tone, draw.between(0.1, 0.35)),
                (float) (x + reach * Math.cos(angle)),
                (float) (y + reach * Math.sin(angle)),
                Light.faint(tone, 0)));
        g.fill(facet);
    }

    /** A tissue or kitchen towel. */
    private static Clutter cloth(Draw draw) {
        double size = draw.between(190, 240);
        Color colour = draw.colour(8, 0xf0f0ee, 0xe8ecef, 0xf2ece4);
        Shape outline = new Rectangle2D.Double(0, 0, size, size * draw.between(0.85, 1.1));
        double pitch = draw.between(4, 9);
        return new Clutter(outline, 0.6, colour, (g, light) -> {
            g.setColor(colour);
            g.fill(outline);
            g.setColor(Light.faint(Light.shade(colour, 0.8), 0.5));
            for (double y = 2; y < size * 1.1; y += pitch) {
                for (double x = 2 + (int) (y / pitch) % 2 * pitch / 2; x < size; x += pitch) {
                    g.fill(new java.awt.geom.Ellipse2D.Double(x, y, pitch * 0.3, pitch * 0.3));
                }
            }
        });
    }
}
