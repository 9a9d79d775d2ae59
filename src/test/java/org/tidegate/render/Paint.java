package org.tidegate.render;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;

/** A flat thing painted in millimetres on a transparent sheet. */
final class Paint {

    /** Pixels a millimetre. */
    static final double SCALE = 10;

    private final BufferedImage sheet;
    private final Graphics2D g;

    Paint(double widthMm, double heightMm) {
        sheet = new BufferedImage(
                (int) Math.round(widthMm * SCALE), (int) Math.round(heightMm * SCALE), BufferedImage.TYPE_INT_ARGB);
        g = sheet.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.transform(AffineTransform.getScaleInstance(SCALE, SCALE));
    }

    BufferedImage sheet() {
        return sheet;
    }

    void fill(Shape shape, Color colour) {
        g.setColor(colour);
        g.fill(shape);
    }

    void block(double x, double y, double w, double h, double radius, Color colour) {
        fill(new RoundRectangle2D.Double(x, y, w, h, 2 * radius, 2 * radius), colour);
    }

    void stroke(Shape shape, double width, Color colour) {
        g.setColor(colour);
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(shape);
    }

    /** Text of that capital height, its strokes a share of it thick. */
    void print(String text, double x, double y, double height, double weight, Color colour) {
        stroke(StrokeFont.print(text, x, y, height), weight * height, colour);
    }

    /** Draws turned about a point by so many quarter turns. */
    void turned(double x, double y, double radians, Runnable drawing) {
        AffineTransform before = g.getTransform();
        g.rotate(radians, x, y);
        drawing.run();
        g.setTransform(before);
    }

    static Color shade(Color c, double factor) {
        return new Color(part(c.getRed() * factor), part(c.getGreen() * factor), part(c.getBlue() * factor));
    }

    private static int part(double value) {
        return (int) Math.max(0, Math.min(255, Math.round(value)));
    }
}
