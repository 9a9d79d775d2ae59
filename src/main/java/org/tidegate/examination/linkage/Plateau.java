package org.tidegate.examination.linkage;

/**
 * A density over minutes: level between two edges, falling off exponentially on both sides.
 *
 * @param from left edge, minutes
 * @param to right edge, minutes
 * @param tail mean of the tails, minutes
 */
record Plateau(double from, double to, double tail) {

    /** Per minute; integrates to 1. */
    double at(double minute) {
        double outside = Math.max(0, Math.max(from - minute, minute - to));
        return Math.exp(-outside / tail) / (to - from + 2 * tail);
    }
}
