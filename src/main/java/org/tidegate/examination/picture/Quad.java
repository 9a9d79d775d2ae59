package org.tidegate.examination.picture;

import java.util.List;
import org.tidegate.finding.PictureFinding.Corner;

/** A convex four-cornered outline in pixels: corners 0–1 are the first long side, going round in the order of the corners. */
record Quad(Corner a, Corner b, Corner c, Corner d) {

    List<Corner> corners() {
        return List.of(a, b, c, d);
    }

    double length() {
        return (distance(a, b) + distance(d, c)) / 2;
    }

    double breadth() {
        return (distance(b, c) + distance(a, d)) / 2;
    }

    double aspect() {
        return length() / Math.max(1e-6, breadth());
    }

    double area() {
        return Math.abs(cross(a, b, c) + cross(a, c, d)) / 2;
    }

    Corner centre() {
        return new Corner((a.x() + b.x() + c.x() + d.x()) / 4, (a.y() + b.y() + c.y() + d.y()) / 4);
    }

    /** The same outline seen with its other end first. */
    Quad turned() {
        return new Quad(c, d, a, b);
    }

    Quad scaled(double factor) {
        return new Quad(scaled(a, factor), scaled(b, factor), scaled(c, factor), scaled(d, factor));
    }

    Quad moved(double x, double y) {
        return new Quad(moved(a, x, y), moved(b, x, y), moved(c, x, y), moved(d, x, y));
    }

    /** Every side moved outwards by so many pixels. */
    Quad grown(double by) {
        double along = by / Math.max(1, length());
        double across = by / Math.max(1, breadth());
        return part(-along, -across, 1 + along, 1 + across);
    }

    /** The parallelogram of the same middle and mean sides: perspective of something small is too uncertain to be carried on. */
    Quad parallelogram() {
        Corner m = centre();
        double ux = (b.x() - a.x() + c.x() - d.x()) / 4;
        double uy = (b.y() - a.y() + c.y() - d.y()) / 4;
        double vx = (d.x() - a.x() + c.x() - b.x()) / 4;
        double vy = (d.y() - a.y() + c.y() - b.y()) / 4;
        return new Quad(
                new Corner(m.x() - ux - vx, m.y() - uy - vy),
                new Corner(m.x() + ux - vx, m.y() + uy - vy),
                new Corner(m.x() + ux + vx, m.y() + uy + vy),
                new Corner(m.x() - ux + vx, m.y() - uy + vy));
    }

    /** The part between two places, as fractions of length and breadth. */
    Quad part(double fromU, double fromV, double toU, double toV) {
        Homography map = Homography.toQuad(this);
        return new Quad(map.at(fromU, fromV), map.at(toU, fromV), map.at(toU, toV), map.at(fromU, toV));
    }

    /** Whether all corners lie within a share of the length of the other's, either end first. */
    boolean isLike(Quad other, double share) {
        double near = share * length();
        return isNear(other, near) || isNear(other.turned(), near);
    }

    private boolean isNear(Quad other, double near) {
        return distance(a, other.a) < near
                && distance(b, other.b) < near
                && distance(c, other.c) < near
                && distance(d, other.d) < near;
    }

    boolean contains(Corner p) {
        boolean positive = false;
        boolean negative = false;
        List<Corner> all = corners();
        for (int i = 0; i < 4; i++) {
            double side = cross(all.get(i), all.get((i + 1) % 4), p);
            positive |= side > 0;
            negative |= side < 0;
        }
        return !(positive && negative);
    }

    /** Share of the smaller outline that lies in the other one, measured on a grid. */
    double sharedWith(Quad other) {
        Quad small = area() <= other.area() ? this : other;
        Quad large = area() <= other.area() ? other : this;
        Homography map = Homography.toQuad(small);
        int inside = 0;
        for (int i = 0; i < 100; i++) {
            inside += large.contains(map.at((i % 10 + 0.5) / 10, (Math.floorDiv(i, 10) + 0.5) / 10)) ? 1 : 0;
        }
        return inside / 100.0;
    }

    /** The same outline with a long side first. */
    Quad longSideFirst() {
        return length() >= breadth() ? this : new Quad(b, c, d, a);
    }

    private static Corner scaled(Corner p, double factor) {
        return new Corner((p.x() + 0.5) * factor - 0.5, (p.y() + 0.5) * factor - 0.5);
    }

    private static Corner moved(Corner p, double x, double y) {
        return new Corner(p.x() + x, p.y() + y);
    }

    static double cross(Corner o, Corner p, Corner q) {
        return (p.x() - o.x()) * (q.y() - o.y()) - (p.y() - o.y()) * (q.x() - o.x());
    }

    static double distance(Corner p, Corner q) {
        return Math.hypot(p.x() - q.x(), p.y() - q.y());
    }
}
