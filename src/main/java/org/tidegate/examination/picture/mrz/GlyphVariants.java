package org.tidegate.examination.picture.mrz;

import java.util.Random;

/** One glyph as a camera may show it: a little off its place, leaning, larger or smaller, thicker or thinner, blurred, noisy. */
final class GlyphVariants {

    private static final double OFF = 0.05;
    private static final double SIZE = 0.05;
    private static final double LEAN = 0.05;
    private static final double BLUR = 2.2;
    private static final double NOISE = 0.04;

    private final Random random;

    /** @param seed the same variants for the same seed */
    GlyphVariants(long seed) {
        this.random = new Random(seed);
    }

    CellWindow next(float[] shape) {
        double blur = 0.4 + BLUR * random.nextDouble();
        float[] soft = blurred(weighted(shape), blur);
        double sx = 1 + SIZE * spread();
        double sy = 1 + SIZE * spread();
        double dx = OFF * spread() * GlyphSheet.WIDTH;
        double dy = OFF * spread() * GlyphSheet.HEIGHT;
        double lean = LEAN * spread();
        double turn = LEAN * spread();
        float[] out = new float[CellWindow.COLUMNS * CellWindow.ROWS];
        for (int i = 0; i < out.length; i++) {
            double x = (i % CellWindow.COLUMNS + 0.5) * 2 - GlyphSheet.WIDTH / 2.0;
            double y = (Math.floorDiv(i, CellWindow.COLUMNS) + 0.5) * 2 - GlyphSheet.HEIGHT / 2.0;
            double u = (x + lean * y) * sx + dx + GlyphSheet.WIDTH / 2.0;
            double v = (y + turn * x) * sy + dy + GlyphSheet.HEIGHT / 2.0;
            out[i] = (float) (at(soft, u, v) + NOISE * random.nextGaussian());
        }
        return new CellWindow(out);
    }

    private double spread() {
        return 2 * random.nextDouble() - 1;
    }

    /** Thicker or thinner strokes: softened a little, then cut at another level. */
    private float[] weighted(float[] shape) {
        float[] soft = blurred(shape, 1.4);
        double level = 0.5 + 0.28 * spread();
        for (int i = 0; i < soft.length; i++) {
            soft[i] = (float) Math.max(0, Math.min(1, 0.5 + (soft[i] - level) * 4));
        }
        return soft;
    }

    private static double at(float[] shape, double u, double v) {
        double x = Math.max(0, Math.min(GlyphSheet.WIDTH - 1.001, u - 0.5));
        double y = Math.max(0, Math.min(GlyphSheet.HEIGHT - 1.001, v - 0.5));
        int left = (int) x;
        int above = (int) y;
        int i = above * GlyphSheet.WIDTH + left;
        double fx = x - left;
        double fy = y - above;
        double top = shape[i] + fx * (shape[i + 1] - shape[i]);
        double low = shape[i + GlyphSheet.WIDTH] + fx * (shape[i + GlyphSheet.WIDTH + 1] - shape[i + GlyphSheet.WIDTH]);
        return top + fy * (low - top);
    }

    /** Gaussian of that standard deviation in pixels of the sheet. */
    private static float[] blurred(float[] shape, double sigma) {
        int reach = (int) Math.ceil(2.5 * sigma);
        float[] kernel = new float[2 * reach + 1];
        float sum = 0;
        for (int k = -reach; k <= reach; k++) {
            kernel[k + reach] = (float) StrictMath.exp(-k * k / (2 * sigma * sigma));
            sum += kernel[k + reach];
        }
        for (int k = 0; k < kernel.length; k++) {
            kernel[k] /= sum;
        }
        float[] across = convolved(shape, kernel, 1, GlyphSheet.WIDTH, GlyphSheet.WIDTH, GlyphSheet.HEIGHT);
        return convolved(across, kernel, GlyphSheet.WIDTH, GlyphSheet.HEIGHT, 1, GlyphSheet.WIDTH);
    }

    /** Along lines of so many pixels that are {@code step} apart; the lines begin {@code between} apart. */
    private static float[] convolved(float[] in, float[] kernel, int step, int length, int between, int lines) {
        float[] out = new float[in.length];
        int reach = kernel.length / 2;
        for (int line = 0; line < lines; line++) {
            for (int i = 0; i < length; i++) {
                float sum = 0;
                int from = Math.max(-reach, -i);
                int to = Math.min(reach, length - 1 - i);
                for (int k = from; k <= to; k++) {
                    sum += kernel[k + reach] * in[line * between + (i + k) * step];
                }
                out[line * between + i * step] = sum;
            }
        }
        return out;
    }
}
