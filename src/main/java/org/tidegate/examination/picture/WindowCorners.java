package org.tidegate.examination.picture;

import java.util.Arrays;
import org.tidegate.finding.PictureFinding.Corner;
import org.tidegate.rules.Protocol.CassetteShape;

/**
 * Corners of a result window on a cassette laid straight, each along the middle of the window's dark rim: they say how the cassette lies better than its own
 * outline does, which takes in shadows and rounded edges.
 */
final class WindowCorners {

    /** A kit's window is told with its rim: how far apart the rim's middles are, as shares of its length and width. */
    private static final double LENGTH_OF_RIMS = 0.96;

    private static final double WIDTH_OF_RIMS = 0.87;

    /** How far from its place a rim is looked for: the first of two, as the outline is not sure, and the second, which follows from it. */
    private static final double FIRST_ALONG = 0.04;

    private static final double SECOND_ALONG = 0.017;
    private static final double FIRST_ACROSS = 0.1;
    private static final double SECOND_ACROSS = 0.06;

    /** Stretches of a rim that are looked at, away from the corners, as shares of the window. */
    private static final double[][] UPRIGHT = {{0.23, 0.45}, {0.55, 0.77}};

    private static final double[][] LEVEL = {{0.07, 0.29}, {0.57, 0.86}};

    /** Half the thickness of a rim for its middle, as a share of the cassette's length. */
    private static final double HALF = 0.009;

    private final double[] dark;
    private final int width;
    private final int height;
    private final CassetteShape shape;

    private WindowCorners(Pixels straight, CassetteShape shape) {
        this.width = straight.width();
        this.height = straight.height();
        this.shape = shape;
        float[] luma = straight.luma();
        float[] sorted = luma.clone();
        Arrays.sort(sorted);
        double body = Math.max(1, sorted[sorted.length / 2]);
        this.dark = new double[luma.length];
        for (int i = 0; i < dark.length; i++) {
            dark[i] = Math.max(0, 1 - luma[i] / body);
        }
    }

    /** Clockwise from the sample end's upper one. */
    static Quad in(Pixels straight, CassetteShape shape) {
        return new WindowCorners(straight, shape).corners();
    }

    /** A straight line by its places at two heights or breadths. */
    private record Edge(double firstAt, double first, double secondAt, double second) {

        double at(double place) {
            return first + (second - first) * (place - firstAt) / (secondAt - firstAt);
        }

        /** Where a level edge meets an upright one: both are nearly straight, so going to and fro comes there soon. */
        Corner meets(Edge upright) {
            double y = first;
            for (int i = 0; i < 4; i++) {
                y = at(upright.at(y));
            }
            return new Corner(upright.at(y), y);
        }
    }

    private Quad corners() {
        double length = shape.windowTo() - shape.windowFrom();
        double above = (1 - shape.windowWidth()) / 2;
        double[][] uprights = new double[2][2];
        double[][] levels = new double[2][2];
        for (int i = 0; i < 2; i++) {
            int from = (int) ((above + UPRIGHT[i][0] * shape.windowWidth()) * height);
            int to = (int) ((above + UPRIGHT[i][1] * shape.windowWidth()) * height);
            uprights[0][i] = column(from, to, shape.windowFrom() * width, FIRST_ALONG * width);
            uprights[1][i] = column(from, to, uprights[0][i] + LENGTH_OF_RIMS * length * width, SECOND_ALONG * width);
            int left = (int) ((shape.windowFrom() + LEVEL[i][0] * length) * width);
            int right = (int) ((shape.windowFrom() + LEVEL[i][1] * length) * width);
            double narrower = (1 - WIDTH_OF_RIMS) / 2 * shape.windowWidth();
            levels[0][i] = row(left, right, (above + narrower) * height, FIRST_ACROSS * height);
            levels[1][i] = row(
                    left, right, levels[0][i] + WIDTH_OF_RIMS * shape.windowWidth() * height, SECOND_ACROSS * height);
        }
        double[] heights = middles(UPRIGHT, above * height, shape.windowWidth() * height);
        double[] places = middles(LEVEL, shape.windowFrom() * width, length * width);
        Edge sampleEnd = edge(heights, uprights[0]);
        Edge otherEnd = edge(heights, uprights[1]);
        Edge upper = edge(places, levels[0]);
        Edge lower = edge(places, levels[1]);
        return new Quad(upper.meets(sampleEnd), upper.meets(otherEnd), lower.meets(otherEnd), lower.meets(sampleEnd));
    }

    private static double[] middles(double[][] stretches, double from, double size) {
        return Arrays.stream(stretches)
                .mapToDouble(s -> from + (s[0] + s[1]) / 2 * size)
                .toArray();
    }

    private static Edge edge(double[] at, double[] place) {
        return new Edge(at[0], place[0], at[1], place[1]);
    }

    private double column(int from, int to, double about, double within) {
        int first = (int) Math.max(0, about - within);
        double[] profile = new double[Math.max(1, (int) Math.min(width - 1.0, about + within) + 1 - first)];
        for (int i = 0; i < profile.length; i++) {
            for (int y = from; y < to; y++) {
                profile[i] += dark[y * width + first + i];
            }
        }
        return first + peak(profile, half());
    }

    private int half() {
        return Math.max(2, (int) Math.round(HALF * width));
    }

    private double row(int from, int to, double about, double within) {
        int first = (int) Math.max(0, about - within);
        double[] profile = new double[Math.max(1, (int) Math.min(height - 1.0, about + within) + 1 - first)];
        for (int i = 0; i < profile.length; i++) {
            for (int x = from; x < to; x++) {
                profile[i] += dark[(first + i) * width + x];
            }
        }
        return first + peak(profile, half());
    }

    /** Middle of the darkest place. */
    private static double peak(double[] profile, int half) {
        double[] sorted = profile.clone();
        Arrays.sort(sorted);
        double usual = sorted[sorted.length * 6 / 10];
        int best = 0;
        for (int i = 0; i < profile.length; i++) {
            best = profile[i] > profile[best] ? i : best;
        }
        double sum = 0;
        double moment = 0;
        for (int i = Math.max(0, best - half); i <= Math.min(profile.length - 1, best + half); i++) {
            double above = Math.max(0, profile[i] - usual);
            sum += above;
            moment += above * i;
        }
        return sum == 0 ? best : moment / sum;
    }
}
