package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tidegate.finding.PictureFinding.Corner;

/** Connected regions of a mask, by runs of a row and union-find. */
public final class Regions {

    /**
     * @param area pixels
     * @param hull convex outline, clockwise on the screen
     */
    public record Region(int area, int left, int top, int right, int bottom, List<Corner> hull) {

        public int width() {
            return right - left + 1;
        }

        public int height() {
            return bottom - top + 1;
        }

        /** Share of its box that its convex outline fills, 0–1. */
        double fill() {
            return (Hull.area(hull) + width() + height()) / ((width() + 1.0) * (height() + 1.0));
        }
    }

    private final int width;
    private final int height;
    private int[] runs = new int[4096];
    private int[] parent = new int[1024];
    private int count;

    private Regions(int width, int height) {
        this.width = width;
        this.height = height;
    }

    /** Regions (neighbours by side) of at least so many pixels, in the order of their first pixel. */
    public static List<Region> of(boolean[] mask, int width, int height, int minArea) {
        Regions regions = new Regions(width, height);
        regions.label(mask);
        return regions.collect(minArea);
    }

    private void label(boolean[] mask) {
        int previous = 0;
        for (int y = 0; y < height; y++) {
            int first = count;
            for (int x = 0; x < width; x++) {
                if (mask[y * width + x]) {
                    int from = x;
                    while (x < width && mask[y * width + x]) {
                        x++;
                    }
                    add(y, from, x - 1);
                }
            }
            join(previous, first, count);
            previous = first;
        }
    }

    private void add(int y, int from, int to) {
        if (3 * count + 3 > runs.length) {
            runs = Arrays.copyOf(runs, runs.length * 2);
        }
        if (count == parent.length) {
            parent = Arrays.copyOf(parent, parent.length * 2);
        }
        runs[3 * count] = y;
        runs[3 * count + 1] = from;
        runs[3 * count + 2] = to;
        parent[count] = count;
        count++;
    }

    /** Joins runs of one row with those of the row above that touch them. */
    private void join(int above, int first, int end) {
        int up = above;
        for (int i = first; i < end; i++) {
            while (up < first && runs[3 * up + 2] < runs[3 * i + 1]) {
                up++;
            }
            for (int k = up; k < first && runs[3 * k + 1] <= runs[3 * i + 2]; k++) {
                if (runs[3 * k] == runs[3 * i] - 1) {
                    union(k, i);
                }
            }
        }
    }

    private int root(int i) {
        int r = i;
        while (parent[r] != r) {
            parent[r] = parent[parent[r]];
            r = parent[r];
        }
        return r;
    }

    private void union(int a, int b) {
        int ra = root(a);
        int rb = root(b);
        parent[Math.max(ra, rb)] = Math.min(ra, rb);
    }

    private List<Region> collect(int minArea) {
        int[] area = new int[count];
        for (int i = 0; i < count; i++) {
            area[root(i)] += runs[3 * i + 2] - runs[3 * i + 1] + 1;
        }
        Map<Integer, List<Corner>> points = new TreeMap<>();
        for (int i = 0; i < count; i++) {
            int root = root(i);
            if (area[root] >= minArea) {
                List<Corner> list = points.computeIfAbsent(root, r -> new ArrayList<>());
                list.add(new Corner(runs[3 * i + 1], runs[3 * i]));
                list.add(new Corner(runs[3 * i + 2], runs[3 * i]));
            }
        }
        List<Region> found = new ArrayList<>();
        points.forEach((root, list) -> found.add(region(area[root], list)));
        return found;
    }

    private static Region region(int area, List<Corner> points) {
        double left = Double.MAX_VALUE;
        double right = 0;
        for (Corner p : points) {
            left = Math.min(left, p.x());
            right = Math.max(right, p.x());
        }
        return new Region(
                area,
                (int) left,
                (int) points.get(0).y(),
                (int) right,
                (int) points.get(points.size() - 1).y(),
                Hull.ofRows(points));
    }
}
