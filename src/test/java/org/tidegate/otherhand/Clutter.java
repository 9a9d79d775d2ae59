package org.tidegate.otherhand;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.LinearGradientPaint;
import java.awt.RadialGradientPaint;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** What else lies on a table. None has the size and shape of a cassette or of a card. */
record Clutter(Shape outline, double height, Color wall, Painter painter) implements Thing {

    interface Painter {
        void paint(Graphics2D g, Light light);
    }

    @Override
    public void paint(Graphics2D g, Light light) {
        Graphics2D own = (Graphics2D) g.create();
        own.clip(outline);
        painter.paint(own, light);
        own.dispose();
    }

    static Clutter drawn(Draw draw) {
        return switch (draw.whole(0, 8)) {
            case 0, 1 -> pen(draw);
            case 2 -> swab(draw);
            case 3, 4 -> vial(draw);
            case 5 -> mug(draw);
            case 6 -> coin(draw);
            case 7 -> key(draw);
            default -> ring(draw);
        };
    }

    private static void round(Graphics2D g, Rectangle2D b, Color colour) {
        g.setPaint(new LinearGradientPaint(
                0, (float) b.getY(), 0, (float) b.getMaxY(), new float[] {0, 0.3f, 0.45f, 1}, new Color[] {
                    Light.shade(colour, 0.8), Light.shade(colour, 1.25), colour, Light.shade(colour, 0.5)
                }));
        g.fill(b);
    }

    private static Clutter pen(Draw draw) {
        Color body = draw.colour(25, 0x1d2a5a, 0x202022, 0xb83030, 0xd8d8d4, 0x2f7a4a, 0xe0a020);
        Color cap = draw.colour(25, 0x1d2a5a, 0x303034, 0xc0c0c4);
        double wide = draw.between(8, 11);
        Area outline = new Area(new RoundRectangle2D.Double(8, 0, 134, wide, wide, wide));
        outline.add(new Area(new Rectangle2D.Double(0, wide * 0.4, 12, wide * 0.2)));
        return new Clutter(outline, 6, body, (g, light) -> {
            round(g, new Rectangle2D.Double(0, 0, 142, wide), body);
            round(g, new Rectangle2D.Double(88, 0, 54, wide), cap);
            round(g, new Rectangle2D.Double(0, 0, 22, wide), new Color(0xb0b0b4));
        });
    }

    private static Clutter swab(Draw draw) {
        Area outline = new Area(new Rectangle2D.Double(0, 1.6, 140, 2.3));
        outline.add(new Area(new RoundRectangle2D.Double(0, 0, 17, 5.5, 5.5, 5.5)));
        return new Clutter(outline, 2.5, new Color(0xe8e8ea), (g, light) -> {
            round(g, new Rectangle2D.Double(15, 1.6, 126, 2.3), new Color(0xd6dbe2));
            round(g, new Rectangle2D.Double(0, 0, 17, 5.5), new Color(0xdedad2));
        });
    }

    private static Clutter vial(Draw draw) {
        Color body = draw.colour(12, 0xe6eaec, 0xd0dde6, 0xe9e4d4);
        Color cap = draw.colour(20, 0x2b62a8, 0xd8d8d8, 0xc23a3a, 0x3a9a62, 0x7a4aa0, 0xe0b030);
        double wide = draw.between(13, 17);
        double run = draw.between(30, 46);
        Area outline = new Area(new RoundRectangle2D.Double(0, 0, run, wide, 5, 5));
        outline.add(new Area(new RoundRectangle2D.Double(run - 2, wide * 0.2, 12, wide * 0.6, 3, 3)));
        return new Clutter(outline, wide * 0.7, body, (g, light) -> {
            round(g, new Rectangle2D.Double(0, 0, run, wide), body);
            g.setColor(Light.faint(new Color(0x9ab4c0), 0.4));
            g.fill(new Rectangle2D.Double(0, wide * 0.5, run * 0.7, wide));
            round(g, new Rectangle2D.Double(run - 2, 0, 14, wide), cap);
        });
    }

    private static Clutter mug(Draw draw) {
        Color glaze = draw.colour(20, 0xf0eee8, 0x3a5a7a, 0xa8432e, 0x2e2e32, 0x7a9a86, 0xe2c04a);
        Color drink = draw.colour(10, 0x2b1a10, 0x8a5a34, 0x3a1c0e, 0xd8d4c4);
        Area outline = new Area(new Ellipse2D.Double(0, 0, 82, 82));
        Area handle = new Area(new RoundRectangle2D.Double(70, 30, 36, 22, 16, 16));
        handle.subtract(new Area(new RoundRectangle2D.Double(76, 36, 22, 10, 8, 8)));
        outline.add(handle);
        return new Clutter(outline, 14, glaze, (g, light) -> {
            g.setColor(glaze);
            g.fill(new Rectangle2D.Double(0, 0, 110, 82));
            g.setPaint(new RadialGradientPaint(
                    new Point2D.Double(41 + 14 * light.x(), 41 + 14 * light.y()), 50f, new float[] {0, 1}, new Color[] {
                        drink, Light.shade(drink, 0.55)
                    }));
            g.fill(new Ellipse2D.Double(4, 4, 74, 74));
        });
    }

    private static Clutter coin(Draw draw) {
        Color metal = draw.colour(15, 0xb87a4a, 0xc9b060, 0xb4b4b2);
        double d = draw.between(17, 26);
        Ellipse2D outline = new Ellipse2D.Double(0, 0, d, d);
        return new Clutter(outline, 1.6, metal, (g, light) -> {
            g.setColor(metal);
            g.fill(outline);
            g.setStroke(new BasicStroke(1));
            g.setColor(Light.shade(metal, 1.25));
            g.draw(new Ellipse2D.Double(1, 1, d - 2, d - 2));
            g.setColor(Light.shade(metal, 0.7));
            Lettering.centred(g, "10", d / 2, d / 2, d / 3, Lettering.SERIF, 0.4);
        });
    }

    private static Clutter key(Draw draw) {
        Color metal = draw.colour(15, 0xb9b9b6, 0xc4a860);
        Area outline = new Area(new Ellipse2D.Double(0, 0, 24, 24));
        outline.subtract(new Area(new Ellipse2D.Double(4, 8, 8, 8)));
        outline.add(new Area(new Rectangle2D.Double(22, 8, 34, 7)));
        for (double x = 32; x < 54; x += 5) {
            outline.subtract(new Area(new Ellipse2D.Double(x, 13, 4, 4)));
        }
        return new Clutter(outline, 2.2, metal, (g, light) -> {
            g.setColor(metal);
            g.fill(outline);
            g.setColor(Light.shade(metal, 0.7));
            g.fill(new Rectangle2D.Double(24, 11, 30, 1));
        });
    }

    /** A watch-like ring or a roll of tape. */
    private static Clutter ring(Draw draw) {
        Color colour = draw.colour(25, 0xc8b080, 0x404044, 0x9a3a4a, 0xd8d8da);
        double d = draw.between(32, 60);
        Area outline = new Area(new Ellipse2D.Double(0, 0, d, d));
        outline.subtract(new Area(new Ellipse2D.Double(d * 0.14, d * 0.14, d * 0.72, d * 0.72)));
        return new Clutter(outline, 8, colour, (g, light) -> {
            g.setColor(colour);
            g.fill(outline);
        });
    }
}
