package org.tidegate.otherhand;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RadialGradientPaint;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** A drawn head and shoulders in a frame of the given size. */
record Portrait(
        Color skin, Color hair, Color cloth, Color ground, int cut, boolean beard, boolean glasses, boolean grey) {

    static Portrait drawn(Draw draw) {
        return new Portrait(
                draw.colour(12, 0xf0cdb2, 0xe2b08c, 0xc68d62, 0x9a6642, 0x6b432b, 0x4a2e20),
                draw.colour(12, 0x2a1d16, 0x54382a, 0x8d6a40, 0xc9a566, 0x9a9a98, 0x7a3c20, 0x141214),
                draw.colour(20, 0x2b3442, 0x6d2f3a, 0x3d5a48, 0xe0e0e4, 0x27272a, 0x5a6f90),
                draw.colour(10, 0xdfe5ea, 0xd2dbe2, 0xe8e6e0, 0xc9d6cf, 0xf0f0f0),
                draw.whole(0, 3),
                draw.chance(0.2),
                draw.chance(0.25),
                draw.chance(0.25));
    }

    void paint(Graphics2D g, double x, double y, double w, double h) {
        Graphics2D p = (Graphics2D) g.create();
        p.clip(new Rectangle2D.Double(x, y, w, h));
        p.translate(x, y);
        p.scale(w / 100, h / 130);
        fill(p, ground, new Rectangle2D.Double(0, 0, 100, 130));
        if (cut == 2) {
            fill(p, hair, new Ellipse2D.Double(22, 18, 56, 96));
        }
        shoulders(p);
        fill(p, Light.shade(skin, 0.82), new Rectangle2D.Double(40, 78, 20, 24));
        head(p);
        face(p);
        p.dispose();
    }

    private void fill(Graphics2D g, Color colour, Shape shape) {
        g.setColor(tone(colour));
        g.fill(shape);
    }

    private Color tone(Color c) {
        int v = (int) (0.3 * c.getRed() + 0.59 * c.getGreen() + 0.11 * c.getBlue());
        return grey ? new Color(v, v, v) : c;
    }

    private void shoulders(Graphics2D g) {
        Path2D body = new Path2D.Double();
        body.moveTo(-2, 131);
        body.curveTo(2, 104, 26, 104, 42, 95);
        body.lineTo(58, 95);
        body.curveTo(74, 104, 98, 104, 102, 131);
        body.closePath();
        fill(g, cloth, body);
        fill(g, Light.shade(cloth, 1.4), new Arc2D.Double(38, 84, 24, 22, 180, 180, Arc2D.CHORD));
    }

    private void head(Graphics2D g) {
        fill(g, Light.shade(skin, 0.9), new Ellipse2D.Double(24, 52, 9, 15));
        fill(g, Light.shade(skin, 0.85), new Ellipse2D.Double(67, 52, 9, 15));
        Shape head = new Ellipse2D.Double(28, 26, 44, 64);
        g.setPaint(new RadialGradientPaint(new Point2D.Double(44, 52), 46f, new float[] {0, 1}, new Color[] {
            tone(Light.shade(skin, 1.06)), tone(Light.shade(skin, 0.72))
        }));
        g.fill(head);
        if (beard) {
            fill(g, Light.faint(tone(hair), 0.75), new Arc2D.Double(28, 40, 44, 51, 190, 160, Arc2D.CHORD));
        }
        if (cut != 3) {
            fill(g, hair, fringe());
        }
    }

    private Shape fringe() {
        Area cap = new Area(new Ellipse2D.Double(25, 17, 50, 78));
        cap.subtract(new Area(new Ellipse2D.Double(cut == 1 ? 24 : 31, cut == 1 ? 43 : 36, cut == 1 ? 46 : 38, 70)));
        cap.subtract(new Area(new Rectangle2D.Double(0, cut == 0 ? 58 : 74, 100, 80)));
        return cap;
    }

    private void face(Graphics2D g) {
        for (int side = -1; side <= 1; side += 2) {
            double x = 50 + side * 10.5;
            fill(g, new Color(0xf4f2ee), new Ellipse2D.Double(x - 4.5, 53, 9, 5));
            fill(g, new Color(0x2c2420), new Ellipse2D.Double(x - 2.2, 53, 4.6, 5));
            fill(g, Light.shade(hair, 0.8), new Rectangle2D.Double(x - 6, 47.5, 12, 2.2));
            if (glasses) {
                g.setStroke(new BasicStroke(1.3f));
                g.draw(new Ellipse2D.Double(x - 8, 49, 16, 13));
            }
        }
        g.setStroke(new BasicStroke(1.6f));
        g.setColor(tone(Light.shade(skin, 0.66)));
        g.draw(new Arc2D.Double(45, 63, 10, 7, 190, 160, Arc2D.OPEN));
        fill(g, Light.mix(skin, new Color(0xa03c3c), 0.55), new Arc2D.Double(41, 70, 18, 8, 180, 180, Arc2D.CHORD));
        fill(g, Light.mix(skin, new Color(0x903030), 0.5), new Ellipse2D.Double(41, 72, 18, 4));
    }
}
