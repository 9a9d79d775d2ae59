package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/** Something that lies about, along u: a box around it, and colours of its own. */
abstract class Prop implements Thing {

    /**
     * A box around a thing, mm.
     *
     * @param gloss 0 dull to 1 mirror
     */
    record Size(double length, double width, double height, double gloss) {}

    final Draws draws;
    final int seed;
    final Color first;
    final Color second;
    final Size size;

    /** What sizes a kind of thing comes in. */
    interface Sizes {
        Size drawn(Draws draws);
    }

    Prop(Draws draws, Sizes sizes) {
        this.draws = draws;
        seed = draws.noiseSeed();
        first = Inks.hsv(draws.share(), draws.between(0.1, 0.85), draws.between(0.25, 0.95));
        second = Inks.hsv(draws.share(), draws.between(0.1, 0.7), draws.between(0.5, 0.95));
        size = sizes.drawn(draws);
    }

    @Override
    public double halfLength() {
        return size.length / 2;
    }

    @Override
    public double halfWidth() {
        return size.width / 2;
    }

    @Override
    public double gloss(double u, double v) {
        return size.gloss;
    }

    /** One of two makes. */
    boolean even() {
        return seed % 2 == 0;
    }

    double left() {
        return -halfLength();
    }

    double top() {
        return -halfWidth();
    }

    void cover(Graphics2D g, Color colour) {
        g.setColor(colour);
        g.fill(new Rectangle2D.Double(left(), top(), size.length, size.width));
    }

    /** The top of something round along u with a radius, lying on its thickest part. */
    static double round(double radius, double v, double axis) {
        return Math.abs(v) > radius ? Double.NaN : axis + Math.sqrt(radius * radius - v * v);
    }

    /** How much of the full radius is left towards a rounded end. */
    static double taper(double fromEnd, double over) {
        double t = Curves.clamp(1 - fromEnd / over, 0, 1);
        return Math.sqrt(1 - t * t);
    }

    double boxed(double u, double v, double corner) {
        return Distances.roundedBox(u, v, halfLength(), halfWidth(), corner);
    }
}
