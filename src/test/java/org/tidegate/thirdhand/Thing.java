package org.tidegate.thirdhand;

import java.awt.Graphics2D;

/** Something that can lie on the table; u, v are mm from its centre, v downwards as in {@link Graphics2D}. */
interface Thing {

    double halfLength();

    double halfWidth();

    /** Above what it lies on, mm; NaN where the thing is not. */
    double height(double u, double v);

    /** Its print and plain colours, clipped by {@link #height} afterwards. */
    default void paint(Graphics2D g) {}

    /** What print cannot do: lines in linear light, skin, dirt. */
    default Rgb finish(double u, double v, Rgb painted) {
        return painted;
    }

    /** 0 dull to 1 mirror. */
    double gloss(double u, double v);

    /** As the story tells it. */
    String name();
}
