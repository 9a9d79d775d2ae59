package org.tidegate.otherhand;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where document, cassettes and clutter lie: nothing that counts covers anything else that counts. */
final class Layout {

    private final Draw draw;
    private final double heading;
    private final List<Placed> counted = new ArrayList<>();
    private final List<Area> taken = new ArrayList<>();

    Layout(Draw draw) {
        this.draw = draw;
        heading = draw.chance(0.65) ? draw.whole(0, 3) * Math.PI / 2 + draw.bell(0, 0.14) : draw.turn();
    }

    List<Placed> counted() {
        return counted;
    }

    /** Places a thing near the others, mostly along or across them. */
    Placed add(Thing thing) {
        double angle = heading + draw.oneOf(0, 0, 0, 1, 2) * Math.PI / 2 + draw.bell(0, draw.chance(0.3) ? 0.5 : 0.08);
        double gap = draw.mostlyLow(2.5, 22);
        double way = draw.turn();
        for (double out = 0; ; out += 2) {
            Placed candidate = new Placed(thing, out * Math.cos(way), out * Math.sin(way), angle);
            if (clear(candidate.grown(gap))) {
                counted.add(candidate);
                taken.add(candidate.grown(1));
                return candidate;
            }
        }
    }

    /** Somewhere in the view where it covers nothing; null when a few tries found no room. */
    @Nullable
    Placed stray(Thing thing, Rectangle2D view) {
        for (int i = 0; i < 12; i++) {
            Placed candidate = new Placed(
                    thing,
                    view.getX() + draw.between(0, 1) * view.getWidth(),
                    view.getY() + draw.between(0, 1) * view.getHeight(),
                    draw.turn());
            if (clear(candidate.grown(4 + thing.height()))) {
                taken.add(candidate.grown(1));
                return candidate;
            }
        }
        return null;
    }

    boolean clear(Area area) {
        return taken.stream().noneMatch(other -> meets(area, other));
    }

    /** Fingers on the edge of one thing that cover no other; null when a few tries found none. */
    @Nullable
    Fingers fingers() {
        for (int i = 0; i < 10; i++) {
            Placed held = counted.get(draw.whole(0, counted.size() - 1));
            Fingers fingers = on(held);
            Area covered = fingers.covered();
            boolean free = counted.stream().filter(p -> p != held).noneMatch(p -> meets(covered, p.grown(1)));
            if (free && !meets(covered, middle(held))) {
                return fingers;
            }
        }
        return null;
    }

    private Fingers on(Placed held) {
        Rectangle2D k = held.thing().keep();
        boolean atEnd = held.thing() instanceof Cassette || draw.chance(0.6);
        double inset = draw.between(-3, held.thing() instanceof Cassette ? 5 : 8);
        double x = atEnd ? draw.chance(0.5) ? inset : k.getWidth() - inset : draw.between(0.1, 0.9) * k.getWidth();
        double y = atEnd ? draw.between(0.2, 0.8) * k.getHeight() : draw.chance(0.5) ? inset : k.getHeight() - inset;
        double out = atEnd ? x < k.getWidth() / 2 ? Math.PI : 0 : y < k.getHeight() / 2 ? -Math.PI / 2 : Math.PI / 2;
        Point2D tip = held.place().transform(new Point2D.Double(k.getX() + x, k.getY() + y), null);
        return new Fingers(tip.getX(), tip.getY(), out + held.angle() + draw.bell(0, 0.35), draw);
    }

    /** The part of a thing that a finger leaves free: all but a tenth at every end. */
    private static Area middle(Placed held) {
        Rectangle2D k = held.thing().keep();
        double dx = k.getWidth() * 0.14;
        double dy = held.thing() instanceof Cassette ? -2 : k.getHeight() * 0.14;
        Rectangle2D inner =
                new Rectangle2D.Double(k.getX() + dx, k.getY() + dy, k.getWidth() - 2 * dx, k.getHeight() - 2 * dy);
        AffineTransform place = held.place();
        return new Area(inner).createTransformedArea(place);
    }

    private static boolean meets(Area one, Area other) {
        if (!one.getBounds2D().intersects(other.getBounds2D())) {
            return false;
        }
        Area both = new Area(one);
        both.intersect(other);
        return !both.isEmpty();
    }
}
