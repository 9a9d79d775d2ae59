package org.tidegate.otherhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;

/** Something that lies on the table. Its own coordinates start at the upper left corner of its bounds. */
interface Thing {

    Shape outline();

    /** How high its upper face lies above the table. */
    double height();

    /** The colour of its side walls. */
    Color wall();

    /** Paints the upper face; {@code light} is turned into the thing's coordinates. */
    void paint(Graphics2D g, Light light);

    /** What must not be cut off by the frame. */
    default Rectangle2D keep() {
        return outline().getBounds2D();
    }

    /** The part of the upper face that mirrors. */
    default Shape glossy() {
        return outline();
    }

    /** How often a reflection stands on it, 0 to 1. */
    default double gloss() {
        return 0;
    }
}
