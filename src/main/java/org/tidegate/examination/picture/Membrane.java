package org.tidegate.examination.picture;

import java.util.Arrays;

/**
 * Where the membrane of a result window begins and ends along it: behind the last grey dark place near either end, for the window may have been
 * seen with its rim and a little of the body about it. A line of dye near an end is no rim.
 */
final class Membrane {

    /** The rim, its shadow and what lies beyond take at most this share of the sample end, where the lines are further away, and of the other. */
    private static final double RIM_BEFORE = 0.27;

    private static final double RIM_BEHIND = 0.2;

    /** How far inwards the membrane is looked at: where it is no lighter, light falls off, and nothing is a rim. */
    private static final double WITHIN = 0.15;

    private static final double DARKER = 0.06;

    /** A rim takes at least this share of what it takes of its strongest colour from its weakest. */
    private static final double GREY = 0.5;

    private final int length;
    private final double[][] light;

    private Membrane(Pixels window) {
        this.length = window.width();
        this.light = new double[3][length];
        for (int i = 0; i < window.rgb().length; i++) {
            for (int c = 0; c < 3; c++) {
                light[c][i % length] += ((window.rgb()[i] >> 8 * c) & 255) / (double) window.height();
            }
        }
    }

    /**
     * @param window middle rows of an upright window
     * @return begin and end as shares of its length
     */
    static double[] ends(Pixels window) {
        Membrane membrane = new Membrane(window);
        int before = (int) (RIM_BEFORE * membrane.length);
        int behind = (int) (RIM_BEHIND * membrane.length);
        int within = (int) (WITHIN * membrane.length);
        int from = 0;
        for (int i = 0; i < before; i++) {
            from = membrane.isRim(i, membrane.levels(i + 1, i + 1 + within)) ? i + 1 : from;
        }
        int to = membrane.length - 1;
        for (int i = to; i >= membrane.length - behind; i--) {
            to = membrane.isRim(i, membrane.levels(i - within, i)) ? i - 1 : to;
        }
        return new double[] {(from + 3.0) / membrane.length, (to - 2.0) / membrane.length};
    }

    private boolean isRim(int at, double[] levels) {
        double least = 1;
        double most = 0;
        for (int c = 0; c < 3; c++) {
            double taken = 1 - light[c][at] / Math.max(1, levels[c]);
            least = Math.min(least, taken);
            most = Math.max(most, taken);
        }
        return most >= DARKER && least >= GREY * most;
    }

    /** How light the membrane is within that part, by channel. */
    private double[] levels(int from, int to) {
        return Arrays.stream(light)
                .mapToDouble(channel -> {
                    double[] part = Arrays.copyOfRange(channel, from, to);
                    Arrays.sort(part);
                    return part[part.length * 8 / 10];
                })
                .toArray();
    }
}
