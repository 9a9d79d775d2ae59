package org.tidegate.examination.picture;

/** Sums over rectangles of a picture's luma, so that any window of it is averaged to a small grid at the same cost. */
final class AreaSums {

    private final int width;
    private final int height;
    private final double[] sums;

    AreaSums(Luma luma) {
        width = luma.width();
        height = luma.height();
        sums = new double[(width + 1) * (height + 1)];
        for (int y = 0; y < height; y++) {
            double row = 0;
            for (int x = 0; x < width; x++) {
                row += luma.get(x, y);
                sums[(y + 1) * (width + 1) + x + 1] = sums[y * (width + 1) + x + 1] + row;
            }
        }
    }

    /** Means over the cells of a side × side grid that is laid over the window. */
    float[][] grid(Window window, int side) {
        double left = window.left() * width;
        double top = window.top() * height;
        double cellWidth = width * (1 - window.left() - window.right()) / side;
        double cellHeight = height * (1 - window.top() - window.bottom()) / side;
        float[][] grid = new float[side][side];
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                double x0 = left + x * cellWidth;
                double y0 = top + y * cellHeight;
                grid[y][x] = (float) (sum(x0, y0, x0 + cellWidth, y0 + cellHeight) / (cellWidth * cellHeight));
            }
        }
        return grid;
    }

    private double sum(double x0, double y0, double x1, double y1) {
        return at(x1, y1) - at(x0, y1) - at(x1, y0) + at(x0, y0);
    }

    /** Sum of everything above and left of a point between pixels. */
    private double at(double x, double y) {
        int column = Math.min(width - 1, (int) x);
        int row = Math.min(height - 1, (int) y);
        double fx = x - column;
        double fy = y - row;
        int i = row * (width + 1) + column;
        int below = i + width + 1;
        return (1 - fy) * ((1 - fx) * sums[i] + fx * sums[i + 1])
                + fy * ((1 - fx) * sums[below] + fx * sums[below + 1]);
    }
}
