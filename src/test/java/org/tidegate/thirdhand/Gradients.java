package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.LinearGradientPaint;
import java.awt.RadialGradientPaint;
import java.awt.geom.Point2D;

/** Gradients with evenly spread stops. */
final class Gradients {

    private Gradients() {}

    static LinearGradientPaint along(double x0, double y0, double x1, double y1, Color... colours) {
        return new LinearGradientPaint(
                new Point2D.Double(x0, y0), new Point2D.Double(x1, y1), stops(colours.length), colours);
    }

    static LinearGradientPaint upright(double from, double to, Color... colours) {
        return along(0, from, 0, to, colours);
    }

    static LinearGradientPaint level(double from, double to, Color... colours) {
        return along(from, 0, to, 0, colours);
    }

    static RadialGradientPaint round(double x, double y, double radius, float[] stops, Color... colours) {
        return new RadialGradientPaint(new Point2D.Double(x, y), (float) radius, stops, colours);
    }

    private static float[] stops(int count) {
        float[] stops = new float[count];
        for (int i = 0; i < count; i++) {
            stops[i] = i / (count - 1f);
        }
        return stops;
    }
}
