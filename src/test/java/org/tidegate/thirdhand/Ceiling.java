package org.tidegate.thirdhand;

/** The highest cell of each block of a relief and of the blocks beside it: rays above it can stride. */
final class Ceiling {

    static final int BLOCK = 16;

    private final Grid highest;
    private final double top;

    Ceiling(Grid heights) {
        int wide = (heights.width() + BLOCK - 1) / BLOCK;
        int tall = (heights.height() + BLOCK - 1) / BLOCK;
        Grid own = Grid.of(wide, tall, (i, j) -> highest(heights, i * BLOCK, j * BLOCK, BLOCK));
        highest = Grid.of(wide, tall, (i, j) -> highest(own, i - 1, j - 1, 3));
        top = highest(highest, 0, 0, Math.max(wide, tall));
    }

    private static double highest(Grid grid, int left, int up, int size) {
        float most = 0;
        for (int j = Math.max(0, up); j < Math.min(grid.height(), up + size); j++) {
            for (int i = Math.max(0, left); i < Math.min(grid.width(), left + size); i++) {
                most = Math.max(most, grid.cell(i, j));
            }
        }
        return most;
    }

    /** Over a cell of the relief. */
    float over(int i, int j) {
        return highest.cell(i / BLOCK, j / BLOCK);
    }

    /** Of all. */
    double top() {
        return top;
    }
}
