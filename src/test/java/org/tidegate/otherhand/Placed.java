package org.tidegate.otherhand;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RadialGradientPaint;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** A thing at its place: the centre of its bounds at (x, y), turned by {@code angle}. */
record Placed(Thing thing, double x, double y, double angle) {

    AffineTransform place() {
        Rectangle2D bounds = thing.outline().getBounds2D();
        AffineTransform at = AffineTransform.getTranslateInstance(x, y);
        at.rotate(angle);
        at.translate(-bounds.getCenterX(), -bounds.getCenterY());
        return at;
    }

    Area grown(double gap) {
        Rectangle2D b = thing.outline().getBounds2D();
        Rectangle2D wide =
                new Rectangle2D.Double(b.getX() - gap, b.getY() - gap, b.getWidth() + 2 * gap, b.getHeight() + 2 * gap);
        return new Area(wide).createTransformedArea(place());
    }

    Point2D[] keep() {
        Rectangle2D k = thing.keep();
        Point2D[] corners = {
            new Point2D.Double(k.getMinX(), k.getMinY()), new Point2D.Double(k.getMaxX(), k.getMinY()),
            new Point2D.Double(k.getMaxX(), k.getMaxY()), new Point2D.Double(k.getMinX(), k.getMaxY())
        };
        Point2D[] there = new Point2D[4];
        place().transform(corners, 0, there, 0, 4);
        return there;
    }

    /** Shadow, walls, upper face and reflection, seen from where the camera stands. */
    void paint(Graphics2D g, Light light, Camera camera, Draw draw) {
        Shape base = place().createTransformedShape(thing.outline());
        shadow(g, base, light, thing.height());
        Point2D lean = camera.lean(x, y, thing.height());
        walls(g, base, lean);
        Graphics2D own = (Graphics2D) g.create();
        own.translate(lean.getX(), lean.getY());
        own.transform(place());
        thing.paint(own, light.seenFrom(angle));
        if (draw.chance(thing.gloss())) {
            reflect(own, draw);
        }
        own.dispose();
    }

    static void shadow(Graphics2D g, Shape base, Light light, double height) {
        double reach = height * light.slope();
        Shape fallen = AffineTransform.getTranslateInstance(light.x() * reach, light.y() * reach)
                .createTransformedShape(base);
        double blur = 0.3 + height * light.spread();
        int steps = 7;
        double alpha = 1 - Math.pow(1 - light.depth(), 1.0 / steps);
        g.setColor(Light.faint(new Color(8, 8, 14), alpha));
        for (int i = 0; i < steps; i++) {
            double grow = blur * (2.0 * i / (steps - 1) - 0.6);
            g.fill(grow > 0 ? grown(fallen, grow) : fallen);
        }
    }

    private static Area grown(Shape shape, double grow) {
        Area area = new Area(shape);
        area.add(new Area(new BasicStroke((float) (2 * grow), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
                .createStrokedShape(shape)));
        return area;
    }

    private void walls(Graphics2D g, Shape base, Point2D lean) {
        int steps = (int) Math.ceil(3 * lean.distance(0, 0)) + 1;
        for (int i = 0; i <= steps; i++) {
            double up = i / (double) steps;
            g.setColor(Light.shade(thing.wall(), 0.72 + 0.18 * up));
            g.fill(AffineTransform.getTranslateInstance(lean.getX() * up, lean.getY() * up)
                    .createTransformedShape(base));
        }
    }

    private void reflect(Graphics2D g, Draw draw) {
        Rectangle2D b = thing.outline().getBounds2D();
        double radius = draw.between(0.15, 0.5) * b.getWidth();
        float strength = (float) draw.mostlyLow(0.08, 0.6);
        Point2D centre = new Point2D.Double(
                b.getX() + draw.between(0, 1) * b.getWidth(), b.getY() + draw.between(0, 1) * b.getHeight());
        g.setComposite(AlphaComposite.SrcOver.derive(strength));
        g.clip(thing.glossy());
        g.rotate(draw.turn(), centre.getX(), centre.getY());
        g.translate(centre.getX(), centre.getY());
        g.scale(1, draw.between(0.3, 1));
        Color white = new Color(255, 255, 252);
        g.setPaint(
                new RadialGradientPaint(new Point2D.Double(), (float) radius, new float[] {0, 0.45f, 1}, new Color[] {
                    white, Light.faint(white, 0.6), Light.faint(white, 0)
                }));
        g.fill(new Rectangle2D.Double(-radius, -radius, 2 * radius, 2 * radius));
    }
}
