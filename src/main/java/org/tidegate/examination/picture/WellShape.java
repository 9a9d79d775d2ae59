package org.tidegate.examination.picture;

import org.tidegate.examination.picture.Regions.Region;

/**
 * What a sample well looks like on an upright body: round or oval, about its middle line. Each limit as for {@link Body#within}.
 *
 * @param breadth of the body's
 * @param aspect length over height
 * @param fill of its box: an ellipse fills π/4
 */
record WellShape(double[] breadth, double[] aspect, double[] fill) {

    /** What tells the sample end. */
    static final WellShape PLAIN = new WellShape(
            new double[] {0.18, 0.26, 0.7, 0.85}, new double[] {0.6, 0.8, 1.8, 2.3}, new double[] {0.66, 0.74, 0.9, 0.96
            });

    /** What speaks for a cassette of any kind. */
    static final WellShape ANY =
            new WellShape(new double[] {0.14, 0.22, 0.7, 0.85}, new double[] {0.6, 0.8, 1.9, 2.4}, new double[] {
                0.62, 0.72, 0.92, 0.97
            });

    /** 0–1. Nothing that reaches in from beyond the body: a finger's tip is as round as a well. */
    double likeness(Region r, Surface s) {
        int edge = (int) Math.round(BodyInside.MARGIN * s.height());
        if (Math.min(r.left(), r.top()) <= edge
                || r.right() >= s.width() - 1 - edge
                || r.bottom() >= s.height() - 1 - edge) {
            return 0;
        }
        double offMiddle = Math.abs((r.top() + r.bottom() + 1) / 2.0 / s.height() - 0.5);
        return within((double) r.height() / s.height(), breadth)
                * within((double) r.width() / r.height(), aspect)
                * within(r.fill(), fill)
                * Body.within(offMiddle, -1, -0.5, 0.1, 0.22);
    }

    private static double within(double value, double[] limits) {
        return Body.within(value, limits[0], limits[1], limits[2], limits[3]);
    }
}
