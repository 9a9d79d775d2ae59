package org.tidegate.examination.picture;

import java.util.Arrays;
import java.util.List;
import org.tidegate.examination.picture.Regions.Region;

/**
 * What is seen within a body's outline, laid upright: whatever stands out of its own colour, and the sample wells among that.
 *
 * @param surface 340 pixels long
 * @param features faint and plain ones
 */
record BodyInside(Surface surface, List<Region> features) {

    private static final int LENGTH = 340;
    private static final double[] STANDS_OUT = {0.05, 0.09, 0.15, 0.25};
    static final double MARGIN = 0.07;
    static final int LEAST_AREA = 12;

    /** Less is no well. */
    private static final double DOUBTFUL = 0.2;

    /** From here on what was seen beside the window is surely a well. */
    private static final double PLAIN_WELL = 0.6;

    static BodyInside of(Quad quad, Pixels image) {
        Surface surface = Surface.of(quad, image, LENGTH, (int) Math.max(24, Math.round(LENGTH / quad.aspect())));
        List<Region> features = Arrays.stream(STANDS_OUT)
                .boxed()
                .flatMap(s -> surface.features(s, MARGIN, LEAST_AREA).stream())
                .toList();
        return new BodyInside(surface, features);
    }

    /**
     * @param left where the window begins, pixels of the surface
     * @param right where it ends
     * @return 1 where a well was surely seen before the window and none behind it, −1 the other way round
     */
    double wellAt(int left, int right) {
        double before = 0;
        double behind = 0;
        for (Region r : features) {
            double quality = WellShape.PLAIN.likeness(r, surface);
            if (quality > DOUBTFUL && r.right() < left) {
                before = Math.max(before, quality);
            } else if (quality > DOUBTFUL && r.left() > right) {
                behind = Math.max(behind, quality);
            }
        }
        return Math.max(-1, Math.min(1, (before - behind) / PLAIN_WELL));
    }
}
