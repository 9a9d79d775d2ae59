package org.tidegate.thirdhand;

import java.util.Collection;
import java.util.List;

/** A rectangle along the table's axes. */
record Bounds(double left, double top, double right, double bottom) {

    static Bounds of(Collection<Placed.Spot> spots) {
        return new Bounds(
                spots.stream().mapToDouble(Placed.Spot::x).min().orElseThrow(),
                spots.stream().mapToDouble(Placed.Spot::y).min().orElseThrow(),
                spots.stream().mapToDouble(Placed.Spot::x).max().orElseThrow(),
                spots.stream().mapToDouble(Placed.Spot::y).max().orElseThrow());
    }

    static Bounds around(List<Placed> things) {
        return of(things.stream().flatMap(t -> t.corners().stream()).toList());
    }

    Bounds grown(double by) {
        return new Bounds(left - by, top - by, right + by, bottom + by);
    }

    double width() {
        return right - left;
    }

    double height() {
        return bottom - top;
    }

    double centreX() {
        return (left + right) / 2;
    }

    double centreY() {
        return (top + bottom) / 2;
    }
}
