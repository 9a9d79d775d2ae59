package org.tidegate.thirdhand;

/** Signed distances to shapes on the plane, negative within. */
final class Distances {

    private Distances() {}

    /** {@link Math#hypot} guards against overflow that cannot happen here, and is many times slower. */
    static double length(double x, double y) {
        return Math.sqrt(x * x + y * y);
    }

    static double roundedBox(double x, double y, double halfLength, double halfWidth, double corner) {
        double qx = Math.abs(x) - halfLength + corner;
        double qy = Math.abs(y) - halfWidth + corner;
        return length(Math.max(qx, 0), Math.max(qy, 0)) + Math.min(Math.max(qx, qy), 0) - corner;
    }

    static double segment(double x, double y, double ax, double ay, double bx, double by) {
        double dx = bx - ax;
        double dy = by - ay;
        double t = Curves.clamp(((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy + 1e-9), 0, 1);
        return length(x - ax - t * dx, y - ay - t * dy);
    }

    /** The nearer of two shapes, with a fillet of {@code fillet} where they meet. */
    static double joined(double a, double b, double fillet) {
        double h = Curves.clamp(0.5 + 0.5 * (b - a) / fillet, 0, 1);
        return Curves.mix(a, b, h) - fillet * h * (1 - h);
    }
}
