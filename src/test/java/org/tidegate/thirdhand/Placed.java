package org.tidegate.thirdhand;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A thing on the table.
 *
 * @param turn of its u axis from the table's x
 * @param base how high it lies
 * @param slope rise along u, mm per mm, for a thing propped up at one end
 */
record Placed(Thing thing, double x, double y, double turn, double base, double slope) {

    /** On the table. */
    record Spot(double x, double y) {}

    static Placed flat(Thing thing, double x, double y, double turn) {
        return new Placed(thing, x, y, turn, 0, 0);
    }

    Placed raised(double by) {
        return new Placed(thing, x, y, turn, base + by, slope);
    }

    Placed propped(double by) {
        return new Placed(thing, x, y, turn, base, by);
    }

    Spot world(double u, double v) {
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        return new Spot(x + u * c - v * s, y + u * s + v * c);
    }

    Spot local(Spot spot) {
        double dx = spot.x - x;
        double dy = spot.y - y;
        double c = Math.cos(turn);
        double s = Math.sin(turn);
        return new Spot(dx * c + dy * s, -dx * s + dy * c);
    }

    /** The four, around. */
    List<Spot> corners() {
        double a = thing.halfLength();
        double b = thing.halfWidth();
        return List.of(world(-a, -b), world(a, -b), world(a, b), world(-a, b));
    }

    double rise(double u) {
        return base + slope * (slope > 0 ? u + thing.halfLength() : u - thing.halfLength());
    }

    boolean covers(Spot spot) {
        Spot at = local(spot);
        return Math.abs(at.x) < thing.halfLength()
                && Math.abs(at.y) < thing.halfWidth()
                && !Double.isNaN(thing.height(at.x, at.y));
    }

    /** Whether it comes closer than {@code gap}; a negative gap lets them overlap that far. */
    boolean hits(Placed other, double gap) {
        return IntStream.range(0, 4).noneMatch(k -> {
            double axis = (k < 2 ? turn : other.turn) + (k % 2) * Math.PI / 2;
            Shade mine = shade(axis);
            Shade theirs = other.shade(axis);
            return mine.high + gap < theirs.low || theirs.high + gap < mine.low;
        });
    }

    private record Shade(double low, double high) {}

    /** Its extent along an axis: two boxes are apart when it is apart along the side of one of them. */
    private Shade shade(double axis) {
        double[] along = corners().stream()
                .mapToDouble(p -> p.x * Math.cos(axis) + p.y * Math.sin(axis))
                .toArray();
        double low = Math.min(Math.min(along[0], along[1]), Math.min(along[2], along[3]));
        double high = Math.max(Math.max(along[0], along[1]), Math.max(along[2], along[3]));
        return new Shade(low, high);
    }
}
