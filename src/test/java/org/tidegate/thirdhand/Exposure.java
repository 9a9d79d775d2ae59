package org.tidegate.thirdhand;

import java.util.Arrays;

/** How a phone sets brightness and white from what it sees, from samples that lie mostly near the middle. */
final class Exposure {

    private static final int SAMPLES = 4000;
    private static final int WHITE_SAMPLES = 3000;
    /** So many of the samples may not be brighter than white. */
    private static final int HIGHLIGHT = 3850;

    private static final double MIDDLE = 0.36;
    /** How far white is corrected towards a grey picture. */
    private static final double GREY_WORLD = 0.35;

    private Exposure() {}

    /** Gains on red, green and blue that a well behaved phone chooses. */
    static Rgb gains(Frame frame, Draws draws) {
        double gain = brightness(frame, draws);
        Rgb sum = Rgb.grey(0);
        int pixels = frame.width() * frame.height();
        for (int i = 0; i < WHITE_SAMPLES; i++) {
            int k = draws.below(pixels);
            sum = sum.plus(frame.at(k % frame.width(), k / frame.width()));
        }
        return new Rgb(
                Math.pow(sum.green() / sum.red(), GREY_WORLD) * gain,
                gain,
                Math.pow(sum.green() / sum.blue(), GREY_WORLD) * gain);
    }

    private static double brightness(Frame frame, Draws draws) {
        double[] light = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            int x = (int) (frame.width() * nearMiddle(draws));
            int y = (int) (frame.height() * nearMiddle(draws));
            Rgb c = frame.at(x, y);
            light[i] = 0.25 * c.red() + 0.65 * c.green() + 0.1 * c.blue();
        }
        Arrays.sort(light);
        // a mean of roots, so that highlights count less
        double root = Arrays.stream(light).map(v -> Math.pow(v, 0.6)).average().orElseThrow();
        double mean = Math.pow(root, 1 / 0.6);
        return Math.min(MIDDLE / mean, 1 / Math.max(light[HIGHLIGHT], 0.02));
    }

    private static double nearMiddle(Draws draws) {
        return Curves.clamp(0.5 + 0.22 * draws.bell(), 0, 0.999);
    }
}
