package org.tidegate.examination.picture;

import java.util.Optional;

/**
 * Finds a result window by its rim alone: a rectangle about the middle line of an upright body whose four sides are thinner and darker than what
 * lies on either side of them, and grey: a line of dye across the membrane is no side. Sees windows whose membrane is as light as the body, and whose rim is too faint or too blurred to hang together.
 */
final class WindowRim {

    /** Half of a rim's thickness, as a share of the body's length. */
    private static final double REACH = 0.016;

    /** Darkness that counts in full: a rim that is there at all all round is worth more than a dark part of something else. */
    private static final float FULL = 0.05f;

    /** Alikeness of the channels up to which something is a dyed line, and from which on it is a rim in full. */
    private static final float DYED = 0.65f;

    private static final float GREY = 0.85f;

    /** How far a rim may leave its straight line, pixels: outlines of bodies are not exact. */
    private static final int ASKEW = 2;

    /** Steps in which noise is counted. */
    private static final int FINE = 1000;

    /** @param seen share of the rim that was seen on its weakest side, 0–1 */
    record Found(int left, int top, int right, int bottom, double seen) {}

    private final int w;
    private final int h;

    /** How much of a rim each place is, 0–1. */
    private final float[] marks;

    WindowRim(Surface surface) {
        this.w = surface.width();
        this.h = surface.height();
        float[] luma = EdgeMap.smooth(surface.pixels().luma(), w, h);
        this.marks = ThinDark.of(luma, w, h, (int) Math.round(REACH * w));
        float noise = Median.of(marks, 1, FINE);
        float[] neutrality = surface.neutrality();
        for (int i = 0; i < marks.length; i++) {
            float colourless = Math.max(0, Math.min(1, (neutrality[i] - DYED) / (GREY - DYED)));
            marks[i] = colourless * Math.max(0, Math.min(FULL, marks[i] - noise)) / FULL;
        }
    }

    Optional<Found> upright() {
        return leaning(0);
    }

    /** @param lean by how many pixels a pixel its ends lean over, where the body's outline is not exact */
    Optional<Found> leaning(double lean) {
        float[] tolerant = ThinDark.widened(straightened(lean), w, h, ASKEW);
        return new RimSearch(tolerant, w, h, 2 * (int) Math.round(REACH * w)).find();
    }

    private float[] straightened(double lean) {
        float[] straight = new float[marks.length];
        for (int y = 0; y < h; y++) {
            int by = (int) Math.round(lean * (y - h / 2.0));
            for (int x = Math.max(0, -by); x < Math.min(w, w - by); x++) {
                straight[y * w + x] = marks[y * w + x + by];
            }
        }
        return straight;
    }
}
