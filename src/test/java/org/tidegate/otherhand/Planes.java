package org.tidegate.otherhand;

/** Three channels of floating numbers, and the blurs that optics, hands and sharpening make. */
final class Planes {

    final int width;
    final int height;
    final float[][] channel;

    Planes(int width, int height) {
        this.width = width;
        this.height = height;
        channel = new float[3][width * height];
    }

    void blur(double sigma) {
        for (int c = 0; c < 3; c++) {
            channel[c] = blurred(channel[c], sigma);
        }
    }

    /** A straight smear: the hand moved while the shutter was open. */
    void smear(double dx, double dy) {
        int taps = Math.max(2, (int) Math.ceil(Math.hypot(dx, dy)) + 1);
        for (int c = 0; c < 3; c++) {
            float[] from = channel[c];
            float[] to = new float[from.length];
            for (int t = 0; t < taps; t++) {
                int ox = (int) Math.round(dx * (t / (taps - 1.0) - 0.5));
                int oy = (int) Math.round(dy * (t / (taps - 1.0) - 0.5));
                add(from, to, ox, oy, 1f / taps);
            }
            channel[c] = to;
        }
    }

    private void add(float[] from, float[] to, int ox, int oy, float weight) {
        for (int y = 0; y < height; y++) {
            int row = clamp(y + oy, height) * width;
            for (int x = 0; x < width; x++) {
                to[y * width + x] += weight * from[row + clamp(x + ox, width)];
            }
        }
    }

    float[] blurred(float[] from, double sigma) {
        float[] kernel = kernel(sigma);
        return down(across(from, kernel), kernel);
    }

    private static float[] kernel(double sigma) {
        int r = Math.max(1, (int) Math.ceil(2.4 * sigma));
        float[] kernel = new float[2 * r + 1];
        float sum = 0;
        for (int i = -r; i <= r; i++) {
            kernel[i + r] = (float) Math.exp(-i * i / (2 * sigma * sigma));
            sum += kernel[i + r];
        }
        for (int i = 0; i < kernel.length; i++) {
            kernel[i] /= sum;
        }
        return kernel;
    }

    private float[] across(float[] from, float[] kernel) {
        int r = kernel.length / 2;
        float[] to = new float[from.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                float sum = 0;
                if (x >= r && x < width - r) {
                    int at = y * width + x - r;
                    for (int k = 0; k < kernel.length; k++) {
                        sum += kernel[k] * from[at + k];
                    }
                } else {
                    for (int k = 0; k < kernel.length; k++) {
                        sum += kernel[k] * from[y * width + clamp(x + k - r, width)];
                    }
                }
                to[y * width + x] = sum;
            }
        }
        return to;
    }

    private float[] down(float[] from, float[] kernel) {
        int r = kernel.length / 2;
        float[] to = new float[from.length];
        for (int y = 0; y < height; y++) {
            for (int k = 0; k < kernel.length; k++) {
                int row = clamp(y + k - r, height) * width;
                float weight = kernel[k];
                for (int x = 0; x < width; x++) {
                    to[y * width + x] += weight * from[row + x];
                }
            }
        }
        return to;
    }

    private static int clamp(int value, int size) {
        return Math.max(0, Math.min(size - 1, value));
    }
}
