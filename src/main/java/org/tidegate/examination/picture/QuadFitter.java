package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.PictureFinding.Corner;

/**
 * Fits a four-cornered outline to a convex hull: the smallest enclosing rectangle gives the four directions, then a straight line is fitted to
 * the hull's edges that face each of them, so that rounded corners and perspective do no harm.
 */
final class QuadFitter {

    private static final double FACING = Math.cos(Math.toRadians(24));

    /** @param fit area of the hull against the quad, at most 1; 1 is a perfect quad */
    record Fitted(Quad quad, double fit) {}

    private record Line(double x, double y, double dx, double dy) {}

    private QuadFitter() {}

    static Optional<Fitted> fit(List<Corner> hull) {
        if (hull.size() < 4) {
            return Optional.empty();
        }
        double angle = rectangleAngle(hull);
        List<Line> sides = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            side(hull, angle + (i - 1) * Math.PI / 2).ifPresent(sides::add);
        }
        if (sides.size() < 4) {
            return Optional.empty();
        }
        Quad quad = new Quad(
                meet(sides.get(3), sides.get(0)),
                meet(sides.get(0), sides.get(1)),
                meet(sides.get(1), sides.get(2)),
                meet(sides.get(2), sides.get(3)));
        return fitted(hull, quad.longSideFirst());
    }

    private static Optional<Fitted> fitted(List<Corner> hull, Quad quad) {
        double quadArea = quad.area();
        double hullArea = Hull.area(hull);
        if (!(quadArea > 1) || !Double.isFinite(quadArea) || !isConvex(quad)) {
            return Optional.empty();
        }
        return Optional.of(new Fitted(quad, Math.min(hullArea, quadArea) / Math.max(hullArea, quadArea)));
    }

    private static boolean isConvex(Quad q) {
        return Quad.cross(q.a(), q.b(), q.c()) > 0
                && Quad.cross(q.b(), q.c(), q.d()) > 0
                && Quad.cross(q.c(), q.d(), q.a()) > 0
                && Quad.cross(q.d(), q.a(), q.b()) > 0;
    }

    /** Direction of the smallest enclosing rectangle, radians: one of its sides lies along a hull edge. */
    private static double rectangleAngle(List<Corner> hull) {
        double best = Double.MAX_VALUE;
        double angle = 0;
        for (int i = 0; i < hull.size(); i++) {
            Corner p = hull.get(i);
            Corner q = hull.get((i + 1) % hull.size());
            double along = Math.atan2(q.y() - p.y(), q.x() - p.x());
            double area = boxArea(hull, Math.cos(along), Math.sin(along));
            if (area < best) {
                best = area;
                angle = along;
            }
        }
        return angle;
    }

    private static double boxArea(List<Corner> hull, double cos, double sin) {
        double minU = Double.MAX_VALUE;
        double maxU = -Double.MAX_VALUE;
        double minV = Double.MAX_VALUE;
        double maxV = -Double.MAX_VALUE;
        for (Corner p : hull) {
            double u = p.x() * cos + p.y() * sin;
            double v = p.y() * cos - p.x() * sin;
            minU = Math.min(minU, u);
            maxU = Math.max(maxU, u);
            minV = Math.min(minV, v);
            maxV = Math.max(maxV, v);
        }
        return (maxU - minU) * (maxV - minV);
    }

    /** Least-squares line through the hull's edges whose outward side faces the given direction, weighted by their length. */
    private static Optional<Line> side(List<Corner> hull, double facing) {
        Moments moments = new Moments();
        for (int i = 0; i < hull.size(); i++) {
            Corner p = hull.get(i);
            Corner q = hull.get((i + 1) % hull.size());
            double length = Quad.distance(p, q);
            // Clockwise on the screen: the outward normal of an edge (dx, dy) is (dy, -dx).
            double towards = (q.y() - p.y()) * Math.cos(facing) - (q.x() - p.x()) * Math.sin(facing);
            if (towards >= FACING * length) {
                moments.addEdge(p, q, length);
            }
        }
        return moments.line();
    }

    private static final class Moments {

        private double w;
        private double x;
        private double y;
        private double xx;
        private double xy;
        private double yy;

        void addEdge(Corner p, Corner q, double weight) {
            for (int i = 0; i < 5; i++) {
                double t = (i + 0.5) / 5;
                double px = p.x() + t * (q.x() - p.x());
                double py = p.y() + t * (q.y() - p.y());
                w += weight;
                x += weight * px;
                y += weight * py;
                xx += weight * px * px;
                xy += weight * px * py;
                yy += weight * py * py;
            }
        }

        Optional<Line> line() {
            if (w == 0) {
                return Optional.empty();
            }
            double mx = x / w;
            double my = y / w;
            double theta = 0.5 * Math.atan2(2 * (xy / w - mx * my), (xx / w - mx * mx) - (yy / w - my * my));
            return Optional.of(new Line(mx, my, Math.cos(theta), Math.sin(theta)));
        }
    }

    private static Corner meet(Line p, Line q) {
        double den = p.dx() * q.dy() - p.dy() * q.dx();
        double t = ((q.x() - p.x()) * q.dy() - (q.y() - p.y()) * q.dx()) / den;
        return new Corner(p.x() + t * p.dx(), p.y() + t * p.dy());
    }
}
