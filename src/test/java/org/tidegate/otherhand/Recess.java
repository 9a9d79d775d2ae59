package org.tidegate.otherhand;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** Openings in plastic: a sloping rim, and the shadow that its wall throws on what lies below. */
final class Recess {

    private Recess() {}

    /** Four slopes round the opening, each lit as it leans. */
    static void rim(Graphics2D g, Rectangle2D in, double wide, double corner, Color plastic, Light light) {
        Rectangle2D out = new Rectangle2D.Double(
                in.getX() - wide, in.getY() - wide, in.getWidth() + 2 * wide, in.getHeight() + 2 * wide);
        double round = 2 * (corner + wide);
        Graphics2D ring = (Graphics2D) g.create();
        ring.clip(new RoundRectangle2D.Double(out.getX(), out.getY(), out.getWidth(), out.getHeight(), round, round));
        double deep = wide + in.getHeight() / 2;
        slope(ring, light.on(plastic, 0, 1, 0.2), out.getX(), out.getY(), out.getWidth(), deep, true);
        slope(ring, light.on(plastic, 0, -1, 0.2), out.getX(), out.getMaxY(), out.getWidth(), -deep, true);
        slope(ring, light.on(plastic, 1, 0, 0.2), out.getX(), out.getY(), deep, out.getHeight(), false);
        slope(ring, light.on(plastic, -1, 0, 0.2), out.getMaxX(), out.getY(), -deep, out.getHeight(), false);
        ring.dispose();
    }

    private static void slope(Graphics2D g, Color colour, double x, double y, double w, double h, boolean along) {
        Path2D face = new Path2D.Double();
        face.moveTo(x, y);
        if (along) {
            face.lineTo(x + w, y);
            face.lineTo(x + w - Math.abs(h), y + h);
            face.lineTo(x + Math.abs(h), y + h);
        } else {
            face.lineTo(x, y + h);
            face.lineTo(x + w, y + h - Math.abs(w));
            face.lineTo(x + w, y + Math.abs(w));
        }
        face.closePath();
        g.setColor(colour);
        g.fill(face);
    }

    /** Darkens the floor below {@code opening} along its wall, most on the side the light comes from. */
    static void shade(Graphics2D g, Shape opening, Light light, double reach, double depth) {
        Graphics2D in = (Graphics2D) g.create();
        in.clip(opening);
        int steps = 6;
        Rectangle2D around = opening.getBounds2D();
        for (int i = 1; i <= steps; i++) {
            double move = reach * i / steps;
            Area dark = new Area(new Rectangle2D.Double(
                    around.getX() - 5, around.getY() - 5, around.getWidth() + 10, around.getHeight() + 10));
            dark.subtract(new Area(AffineTransform.getTranslateInstance(light.x() * move, light.y() * move)
                    .createTransformedShape(opening)));
            in.setColor(Light.faint(Color.BLACK, 1 - Math.pow(1 - depth, 1.0 / steps)));
            in.fill(dark);
        }
        in.setColor(Light.faint(Color.BLACK, 0.12));
        in.setStroke(new BasicStroke((float) (reach * 0.7)));
        in.draw(opening);
        in.dispose();
    }
}
