package org.tidegate.thirdhand;

import java.awt.geom.Rectangle2D;
import java.util.List;

/** How much of a thing is out of sight: outside the picture, or under something laid on it. */
final class Sight {

    private static final int ALONG = 15;
    private static final int ACROSS = 3;

    /** Whether a place is out of the picture. */
    interface Frame {
        boolean misses(Placed.Spot spot, double height);
    }

    private Sight() {}

    static Frame of(Camera camera) {
        return (spot, height) -> !camera.sees(camera.project(spot.x(), spot.y(), height), 0);
    }

    /** The share of an area of a thing, by its own axes. */
    static double hidden(Placed placed, Rectangle2D area, List<Placed> above, Frame frame) {
        int hidden = 0;
        for (int i = -ALONG; i <= ALONG; i++) {
            for (int j = -ACROSS; j <= ACROSS; j++) {
                Placed.Spot spot = placed.world(
                        area.getCenterX() + i / (2.0 * ALONG) * area.getWidth(),
                        area.getCenterY() + j / (2.0 * ACROSS) * area.getHeight());
                boolean lost =
                        frame.misses(spot, placed.base()) || above.stream().anyMatch(p -> p.covers(spot));
                hidden += lost ? 1 : 0;
            }
        }
        return hidden / (double) ((2 * ALONG + 1) * (2 * ACROSS + 1));
    }

    static double hidden(Placed placed, double share, List<Placed> above, Frame frame) {
        double u = placed.thing().halfLength() * share;
        double v = placed.thing().halfWidth() * share;
        return hidden(placed, new Rectangle2D.Double(-u, -v, 2 * u, 2 * v), above, frame);
    }
}
