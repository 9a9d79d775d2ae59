package org.tidegate.thirdhand;

import java.util.stream.IntStream;

/** Blur. */
final class Optics {

    /** Pixels; less blur than this cannot be seen. */
    private static final double LEAST = 0.25;

    private static final double REACH = 2.8;

    private Optics() {}

    /** @param deviation pixels */
    static Frame gaussian(Frame frame, double deviation) {
        if (deviation < LEAST) {
            return frame;
        }
        float[] kernel = kernel(deviation);
        int w = frame.width();
        int h = frame.height();
        float[] rows = new float[frame.values().length];
        IntStream.range(0, h).parallel().forEach(j -> blur(frame.values(), rows, j * w, 1, w, kernel));
        float[] both = new float[frame.values().length];
        IntStream.range(0, w).parallel().forEach(i -> blur(rows, both, i, w, h, kernel));
        return new Frame(both, w, h);
    }

    private static float[] kernel(double deviation) {
        int reach = (int) Math.ceil(deviation * REACH);
        float[] kernel = new float[2 * reach + 1];
        double sum = 0;
        for (int i = -reach; i <= reach; i++) {
            kernel[i + reach] = (float) Math.exp(-i * i / (2 * deviation * deviation));
            sum += kernel[i + reach];
        }
        for (int i = 0; i < kernel.length; i++) {
            kernel[i] = (float) (kernel[i] / sum);
        }
        return kernel;
    }

    /** One row or column of pixels. */
    private static void blur(float[] from, float[] to, int first, int stride, int count, float[] kernel) {
        int reach = kernel.length / 2;
        for (int i = 0; i < count; i++) {
            float red = 0;
            float green = 0;
            float blue = 0;
            for (int k = -reach; k <= reach; k++) {
                int at = 3 * (first + Math.max(0, Math.min(count - 1, i + k)) * stride);
                float weight = kernel[k + reach];
                red += weight * from[at];
                green += weight * from[at + 1];
                blue += weight * from[at + 2];
            }
            int at = 3 * (first + i * stride);
            to[at] = red;
            to[at + 1] = green;
            to[at + 2] = blue;
        }
    }

    /**
     * The phone moved while the shutter was open.
     *
     * @param way pixels
     */
    static Frame moved(Frame frame, double way, double direction) {
        if (way <= 1) {
            return frame;
        }
        int samples = Math.max(2, (int) way + 1);
        double dx = Math.cos(direction) * way;
        double dy = Math.sin(direction) * way;
        return frame.changed((i, j, before) -> {
            Rgb sum = Rgb.grey(0);
            for (int k = 0; k < samples; k++) {
                double t = k / (samples - 1.0) - 0.5;
                int x = (int) Curves.clamp(i + dx * t + 0.5, 0, frame.width() - 1);
                int y = (int) Curves.clamp(j + dy * t + 0.5, 0, frame.height() - 1);
                sum = sum.plus(frame.at(x, y));
            }
            return sum.times(1.0 / samples);
        });
    }
}
