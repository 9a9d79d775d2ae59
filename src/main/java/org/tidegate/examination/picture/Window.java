package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.List;

/** Part of a picture: the shares that are cut off at each edge. */
record Window(double left, double top, double right, double bottom) {

    static final Window WHOLE = new Window(0, 0, 0, 0);

    /** Share that a crop takes from an edge, where it takes anything; also what the centre leaves out all around. */
    private static final double CROP = 0.05;

    static final Window CENTRE = new Window(CROP, CROP, CROP, CROP);

    /**
     * Where the centre of the original lies in a picture that was cropped: by {@link #CROP} at any set of edges, or by half of it at all four.
     */
    static List<Window> centresOfCropped() {
        List<Window> all = new ArrayList<>();
        for (int edges = 0; edges < 16; edges++) {
            all.add(centreOf(cut(edges, 1), cut(edges, 2), cut(edges, 4), cut(edges, 8)));
        }
        all.add(centreOf(CROP / 2, CROP / 2, CROP / 2, CROP / 2));
        return all;
    }

    private static double cut(int edges, int edge) {
        return (edges & edge) == 0 ? 0 : CROP;
    }

    private static Window centreOf(double left, double top, double right, double bottom) {
        double width = 1 - left - right;
        double height = 1 - top - bottom;
        return new Window(
                (CROP - left) / width, (CROP - top) / height, (CROP - right) / width, (CROP - bottom) / height);
    }
}
