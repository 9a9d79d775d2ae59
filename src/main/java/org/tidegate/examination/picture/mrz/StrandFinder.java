package org.tidegate.examination.picture.mrz;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tidegate.examination.picture.Luma;

/**
 * Finds rows of small dark marks at any angle: marks that lie no farther apart than the letters of a word grow together, and what is long and
 * thin, but not solid, may be a line of text. Looked for at several sizes, each half of the one before.
 */
final class StrandFinder {

    private static final int GAP = 5;
    private static final int SIZES = 3;
    private static final double SLENDER = 6;
    private static final double LEAST_HEIGHT = 3;
    private static final double MOST_HEIGHT = 18;
    private static final double MOST_INK = 0.75;

    private final DarkMarks marks;
    private final int[] parent;

    private StrandFinder(DarkMarks marks) {
        this.marks = marks;
        this.parent = new int[marks.count()];
        for (int i = 0; i < parent.length; i++) {
            parent[i] = i;
        }
    }

    /** Longest first, in pixels of the given picture. */
    static List<Strand> in(Luma luma) {
        List<Strand> all = new ArrayList<>();
        Luma now = luma;
        double scale = 1;
        for (int size = 0; size < SIZES && Math.min(now.width(), now.height()) > 60; size++) {
            for (Strand s : new StrandFinder(DarkMarks.in(now)).strands()) {
                all.add(s.scaled(scale));
            }
            now = now.halved();
            scale *= 2;
        }
        all.sort(Comparator.comparingDouble(Strand::length).reversed());
        return all;
    }

    private List<Strand> strands() {
        for (int y = 0; y < marks.height; y++) {
            alongRow(y);
            for (int d = 1; d <= Math.min(GAP, y); d++) {
                betweenRows(y - d, y, GAP - d);
            }
        }
        double[][] moments = new double[parent.length][];
        for (int y = 0; y < marks.height; y++) {
            for (int i = marks.rows[y]; i < marks.rows[y + 1]; i++) {
                int root = root(i);
                if (moments[root] == null) {
                    moments[root] = new double[6];
                }
                add(moments[root], marks.from[i], marks.to[i], y);
            }
        }
        List<Strand> out = new ArrayList<>();
        for (double[] m : moments) {
            if (m != null && m[0] > 40) {
                Strand s = strand(m);
                if (isLine(s)) {
                    out.add(s);
                }
            }
        }
        return out;
    }

    private static boolean isLine(Strand s) {
        return s.length() > SLENDER * s.height()
                && s.height() > LEAST_HEIGHT
                && s.height() < MOST_HEIGHT
                && s.ink() < MOST_INK;
    }

    private void alongRow(int y) {
        for (int i = marks.rows[y] + 1; i < marks.rows[y + 1]; i++) {
            if (marks.from[i] - marks.to[i - 1] <= GAP) {
                union(i - 1, i);
            }
        }
    }

    private void betweenRows(int above, int y, int reach) {
        int up = marks.rows[above];
        int end = marks.rows[above + 1];
        for (int i = marks.rows[y]; i < marks.rows[y + 1]; i++) {
            while (up < end && marks.to[up] + reach < marks.from[i]) {
                up++;
            }
            for (int k = up; k < end && marks.from[k] <= marks.to[i] + reach; k++) {
                union(k, i);
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

    private static void add(double[] m, int from, int to, int y) {
        double n = to - from + 1.0;
        double middle = (from + to) / 2.0;
        double squares = n * middle * middle + n * (n * n - 1) / 12;
        m[0] += n;
        m[1] += n * middle;
        m[2] += n * y;
        m[3] += squares;
        m[4] += n * middle * y;
        m[5] += n * (double) y * y;
    }

    /** The bar of the same second moments. */
    private static Strand strand(double[] m) {
        double x = m[1] / m[0];
        double y = m[2] / m[0];
        double xx = m[3] / m[0] - x * x;
        double xy = m[4] / m[0] - x * y;
        double yy = m[5] / m[0] - y * y;
        double angle = 0.5 * Math.atan2(2 * xy, xx - yy);
        double root = Math.hypot((xx - yy) / 2, xy);
        double length = Math.sqrt(12 * ((xx + yy) / 2 + root));
        double height = Math.sqrt(12 * Math.max(0.05, (xx + yy) / 2 - root));
        return new Strand(x, y, angle, length, height, m[0] / (length * height));
    }
}
