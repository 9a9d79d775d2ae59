package org.tidegate.examination.picture;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.tidegate.finding.PictureFinding.Line;

/**
 * How much light a strip takes away along its length, in a channel: 1 − (colour / membrane beside it). Index 0 is the sample end.
 * It is taken in three bands of the strip, so that a smudge can be told from a line that goes right across.
 */
public final class LineProfile {

    /** Width of a line, and where the membrane beside it is looked at, as shares of the strip. */
    private static final double LINE = 0.03;

    private static final double BESIDE_FROM = 0.07;
    private static final double BESIDE_TO = 0.15;
    private static final int BANDS = 3;
    private static final double OUT_OF_NOISE = 3.5;

    private final double[][] bands;
    private final double[] mean;

    private LineProfile(double[][] bands) {
        this.bands = bands;
        this.mean = new double[bands[0].length];
        for (double[] band : bands) {
            for (int i = 0; i < mean.length; i++) {
                mean[i] += band[i] / bands.length;
            }
        }
    }

    /**
     * @param strip upright strip, sample end left
     * @param shift bit position of the channel in 0xRRGGBB
     */
    static LineProfile of(Pixels strip, int shift) {
        double[][] bands = new double[BANDS][strip.width()];
        for (int band = 0; band < BANDS; band++) {
            int from = band * strip.height() / BANDS;
            int to = (band + 1) * strip.height() / BANDS;
            for (int x = 0; x < strip.width(); x++) {
                double sum = 0;
                for (int y = from; y < to; y++) {
                    sum += (strip.rgb()[y * strip.width() + x] >> shift) & 255;
                }
                bands[band][x] = sum / (to - from);
            }
        }
        return new LineProfile(bands);
    }

    /** Share of the places that are not darker than the light ones by more than so much (relative). */
    double lightShare(double within) {
        double level = (1 - within) * light();
        return (double) Arrays.stream(mean).filter(v -> v >= level).count() / mean.length;
    }

    /** How light the membrane is: four fifths of the places are darker. */
    double light() {
        double[] sorted = mean.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length * 8 / 10];
    }

    /** Contrast of the place against the membrane on both sides of it; negative where it is lighter. */
    double contrastAt(int x) {
        return contrast(mean, x);
    }

    private double contrast(double[] values, int x) {
        double beside = (beside(values, x, -1) + beside(values, x, 1)) / 2;
        return 1 - line(values, x) / Math.max(8, beside);
    }

    /** The same against the darker side only: a step in the light is no line. */
    private double cautious(double[] values, int x) {
        double beside = Math.min(beside(values, x, -1), beside(values, x, 1));
        return 1 - line(values, x) / Math.max(8, beside);
    }

    private double line(double[] values, int x) {
        int half = (int) Math.max(1, Math.round(LINE * values.length / 2));
        return average(values, x - half, x + half);
    }

    private static double beside(double[] values, int x, int side) {
        int near = (int) Math.round(BESIDE_FROM * values.length);
        int far = (int) Math.round(BESIDE_TO * values.length);
        return side < 0 ? average(values, x - far, x - near) : average(values, x + near, x + far);
    }

    private static double average(double[] values, int from, int to) {
        int low = Math.max(0, Math.min(values.length - 1, from));
        int high = Math.max(low, Math.min(values.length - 1, to));
        double sum = 0;
        for (int i = low; i <= high; i++) {
            sum += values[i];
        }
        return sum / (high - low + 1);
    }

    /** Place of the strongest contrast between two shares of the length. */
    int strongest(double from, double to) {
        int best = (int) Math.round(from * (mean.length - 1));
        for (int x = best; x <= to * (mean.length - 1); x++) {
            if (contrastAt(x) > contrastAt(best)) {
                best = x;
            }
        }
        return best;
    }

    /**
     * Spread of the contrast as it would be without lines at two places: median absolute deviation × 1.4826 (the factor for a normal distribution).
     * A strong line left in would make the membrane beside it look restless, and hide a faint one there.
     */
    private double noise(int first, int second) {
        double[] bare = without(without(mean, first), second);
        int from = (int) Math.round(BESIDE_FROM * mean.length);
        double[] away = IntStream.range(from, mean.length - from)
                .filter(x -> Math.abs(x - first) > from && Math.abs(x - second) > from)
                .mapToDouble(x -> contrast(bare, x))
                .toArray();
        return away.length == 0 ? 0 : 1.4826 * medianOfDistance(away);
    }

    /** With a line's place filled by a straight run from the membrane before it to the membrane behind it. */
    private static double[] without(double[] values, int at) {
        double[] out = values.clone();
        int half = (int) Math.round(BESIDE_FROM * values.length);
        double before = beside(values, at, -1);
        double behind = beside(values, at, 1);
        for (int x = Math.max(0, at - half); x <= Math.min(values.length - 1, at + half); x++) {
            double share = (x - at + half) / (2.0 * half);
            out[x] = before + share * (behind - before);
        }
        return out;
    }

    private static double medianOfDistance(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double median = sorted[sorted.length / 2];
        for (int i = 0; i < sorted.length; i++) {
            sorted[i] = Math.abs(values[i] - median);
        }
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    /**
     * The line at a place; present where it goes right across the strip, stands out of the noise and is no mere step in the light.
     *
     * @param other where another line may be
     */
    Line lineAt(int at, int other, double least) {
        double strength = Math.max(0, Math.min(1, contrastAt(at)));
        double weakest = 1;
        for (double[] band : bands) {
            weakest = Math.min(weakest, contrast(band, at));
        }
        double noise = noise(at, other);
        boolean across = weakest > 0.4 * strength;
        boolean bothSides = cautious(mean, at) > 0.5 * least;
        boolean clear = strength >= threshold(noise, least);
        return new Line(clear && across && bothSides, strength, noise);
    }

    /** Contrast from which a line stands out of such noise, at least the given one. */
    static double threshold(double noise, double least) {
        return Math.max(least, OUT_OF_NOISE * noise);
    }
}
