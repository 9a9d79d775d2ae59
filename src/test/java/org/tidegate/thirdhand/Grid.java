package org.tidegate.thirdhand;

import java.util.stream.IntStream;

/** A field of numbers in rows; compared by identity only. */
record Grid(float[] values, int width, int height) {

    static Grid empty(int width, int height) {
        return new Grid(new float[width * height], width, height);
    }

    /** A value per cell, computed in parallel. */
    interface Cell {
        double at(int i, int j);
    }

    static Grid of(int width, int height, Cell cell) {
        Grid grid = empty(width, height);
        IntStream.range(0, height).parallel().forEach(j -> {
            for (int i = 0; i < width; i++) {
                grid.values[j * width + i] = (float) cell.at(i, j);
            }
        });
        return grid;
    }

    float cell(int i, int j) {
        return values[j * width + i];
    }

    /** The cell or, beyond the edge, the nearest one. */
    float nearest(int i, int j) {
        return cell(Math.max(0, Math.min(i, width - 1)), Math.max(0, Math.min(j, height - 1)));
    }

    /** Between the cells, linearly. */
    double at(double x, double y) {
        double px = Curves.clamp(x, 0, width - 1.01);
        double py = Curves.clamp(y, 0, height - 1.01);
        int i = (int) px;
        int j = (int) py;
        int k = Math.min(j, height - 2) * width + Math.min(i, width - 2);
        double a = px - i;
        double b = py - j;
        return (values[k] * (1 - a) + values[k + 1] * a) * (1 - b)
                + (values[k + width] * (1 - a) + values[k + width + 1] * a) * b;
    }

    /** The mean over a square of 2 radius + 1 cells, two times. */
    Grid blurred(int radius) {
        return averaged(radius).averaged(radius);
    }

    Grid averaged(int radius) {
        float[] rows = new float[values.length];
        IntStream.range(0, height).parallel().forEach(j -> average(values, rows, j * width, 1, width, radius));
        float[] both = new float[values.length];
        IntStream.range(0, width).parallel().forEach(i -> average(rows, both, i, width, height, radius));
        return new Grid(both, width, height);
    }

    private static void average(float[] from, float[] to, int first, int stride, int count, int radius) {
        double sum = 0;
        int n = 0;
        for (int i = -radius; i < count; i++) {
            if (i + radius < count) {
                sum += from[first + (i + radius) * stride];
                n++;
            }
            if (i - radius > 0) {
                sum -= from[first + (i - radius - 1) * stride];
                n--;
            }
            if (i >= 0) {
                to[first + i * stride] = (float) (sum / n);
            }
        }
    }
}
