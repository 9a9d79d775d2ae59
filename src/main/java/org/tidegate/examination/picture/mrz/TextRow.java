package org.tidegate.examination.picture.mrz;

import java.util.List;

/**
 * One line of evenly set letters on a patch.
 *
 * @param middle through the middles of its letters
 * @param capital height of a capital, in steps of the grid
 */
record TextRow(Straight middle, PitchGrid grid, double capital) {

    /** Of marks that all belong to the line. */
    static TextRow of(Straight middle, PitchGrid grid, List<Mark> marks) {
        double[] heights = marks.stream()
                .mapToDouble(m -> m.height() / grid.step(grid.numberAt(m.x())))
                .sorted()
                .toArray();
        return new TextRow(middle, grid, heights[heights.length * 7 / 10]);
    }

    TextRow with(PitchGrid other) {
        return new TextRow(middle, other, capital);
    }
}
