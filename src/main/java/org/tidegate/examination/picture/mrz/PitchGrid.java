package org.tidegate.examination.picture.mrz;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Even steps along a line, under perspective nearly even: place i stands at a + b·i + c·i².
 *
 * @param first number of the first place that bears a mark
 * @param last number of the last one
 */
record PitchGrid(double a, double b, double c, int first, int last) {

    private static final int LEAST = 10;

    /** A mark farther than this share of a step from its place was no single letter. */
    private static final double[] NEAR = {0.45, 0.3, 0.22};

    private record Numbered(int i, double x) {}

    double at(double i) {
        return a + b * i + c * i * i;
    }

    double step(double i) {
        return b + 2 * c * i;
    }

    int count() {
        return last - first + 1;
    }

    /** The number, with its fraction, of the place at x. */
    double numberAt(double x) {
        double i = (x - a) / b;
        for (int round = 0; round < 4; round++) {
            i -= (at(i) - x) / step(i);
        }
        return i;
    }

    /** The same places counted from another one on. */
    PitchGrid countedFrom(int number, int count) {
        return new PitchGrid(at(number), step(number), c, 0, count - 1);
    }

    /** Moved and stretched: by so much at its first place, by so much more at each place after. */
    PitchGrid moved(double atFirst, double more) {
        return new PitchGrid(a + atFirst, b + more, c, first, last);
    }

    static Optional<PitchGrid> of(List<Mark> line) {
        List<Mark> marks =
                line.stream().sorted(Comparator.comparingDouble(Mark::x)).toList();
        double step = usualStep(marks);
        if (marks.size() < LEAST || step <= 0) {
            return Optional.empty();
        }
        PitchGrid grid = fit(numbered(marks, step));
        for (double near : NEAR) {
            PitchGrid now = grid;
            List<Numbered> kept = new ArrayList<>();
            for (Mark m : marks) {
                int i = (int) Math.round(now.numberAt(m.x()));
                if (m.width() < 1.25 * now.step(i) && Math.abs(now.at(i) - m.x()) < near * now.step(i)) {
                    kept.add(new Numbered(i, m.x()));
                }
            }
            if (kept.size() < LEAST) {
                return Optional.empty();
            }
            grid = fit(kept);
        }
        return Math.abs(grid.c() * grid.count()) < 0.3 * grid.b() ? Optional.of(grid) : Optional.empty();
    }

    private static double usualStep(List<Mark> marks) {
        double[] steps = new double[Math.max(0, marks.size() - 1)];
        int n = 0;
        for (int k = 1; k < marks.size(); k++) {
            double d = marks.get(k).x() - marks.get(k - 1).x();
            if (d > 0.6 * Patch.CAPITAL && d < 1.6 * Patch.CAPITAL) {
                steps[n++] = d;
            }
        }
        Arrays.sort(steps, 0, n);
        return n == 0 ? 0 : steps[n / 2];
    }

    /** Counts steps from mark to mark, the step following the perspective. */
    private static List<Numbered> numbered(List<Mark> marks, double usual) {
        List<Numbered> out = new ArrayList<>();
        double step = usual;
        int i = 0;
        for (int k = 0; k < marks.size(); k++) {
            if (k > 0) {
                double d = marks.get(k).x() - marks.get(k - 1).x();
                int steps = (int) Math.round(d / step);
                i += steps;
                if (steps == 1) {
                    step += 0.1 * (Math.max(0.85 * usual, Math.min(1.15 * usual, d)) - step);
                }
            }
            out.add(new Numbered(i, marks.get(k).x()));
        }
        return out;
    }

    /** Least squares; a parabola from 15 places on, a straight line below. */
    private static PitchGrid fit(List<Numbered> at) {
        int first = at.stream().mapToInt(Numbered::i).min().orElse(0);
        int last = at.stream().mapToInt(Numbered::i).max().orElse(0);
        int n = last - first >= 15 ? 3 : 2;
        double[][] normal = new double[n][n];
        double[] right = new double[n];
        double middle = (first + last) / 2.0;
        double half = Math.max(1, (last - first) / 2.0);
        for (Numbered p : at) {
            double t = (p.i() - middle) / half;
            double[] powers = {1, t, t * t};
            for (int r = 0; r < n; r++) {
                right[r] += powers[r] * p.x();
                for (int s = 0; s <= r; s++) {
                    normal[r][s] += powers[r] * powers[s];
                }
            }
        }
        for (int r = 0; r < n; r++) {
            normal[r][r] += 1e-9;
        }
        double[] k = Cholesky.solve(Cholesky.of(normal), right);
        double c = n == 3 ? k[2] / (half * half) : 0;
        double b = k[1] / half - 2 * c * middle;
        return new PitchGrid(k[0] - k[1] / half * middle + c * middle * middle, b, c, first, last);
    }
}
