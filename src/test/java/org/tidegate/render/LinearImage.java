package org.tidegate.render;

import java.awt.image.BufferedImage;
import java.util.Random;

/** A picture in linear light, three planes, 1 is full exposure. */
final class LinearImage {

    final int width;
    final int height;
    final float[][] planes;

    LinearImage(int width, int height) {
        this.width = width;
        this.height = height;
        this.planes = new float[3][width * height];
    }

    void set(int x, int y, double r, double g, double b) {
        int i = y * width + x;
        planes[0][i] = (float) r;
        planes[1][i] = (float) g;
        planes[2][i] = (float) b;
    }

    /** A disc of that radius in pixels, by three box means of the same variance. */
    void defocus(double radius) {
        int half = (int) Math.round(radius / 2);
        for (int pass = 0; pass < 3 && half > 0; pass++) {
            for (int c = 0; c < 3; c++) {
                planes[c] = smear(smear(planes[c], 1, 0, half), 0, 1, half);
            }
        }
    }

    /** A straight smear of so many pixels. */
    void motion(double length, double angle) {
        int half = (int) Math.round(length / 2);
        if (half > 0) {
            for (int c = 0; c < 3; c++) {
                planes[c] = smear(planes[c], Math.cos(angle), Math.sin(angle), half);
            }
        }
    }

    private float[] smear(float[] plane, double dx, double dy, int half) {
        float[] out = new float[plane.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                float sum = 0;
                for (int k = -half; k <= half; k++) {
                    int px = Math.max(0, Math.min(width - 1, (int) Math.round(x + k * dx)));
                    int py = Math.max(0, Math.min(height - 1, (int) Math.round(y + k * dy)));
                    sum += plane[py * width + px];
                }
                out[y * width + x] = sum / (2 * half + 1);
            }
        }
        return out;
    }

    /**
     * @param shot standard deviation at full exposure; falls with the root of the signal
     * @param sensor standard deviation at any signal
     */
    void noise(double shot, double sensor, Random random) {
        for (float[] plane : planes) {
            for (int i = 0; i < plane.length; i++) {
                double sd = Math.sqrt(shot * shot * Math.max(0, plane[i]) + sensor * sensor);
                plane[i] += (float) (sd * random.nextGaussian());
            }
        }
    }

    /** sRGB coding, IEC 61966-2-1. */
    BufferedImage coded() {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < width * height; i++) {
            int rgb = code(planes[0][i]) << 16 | code(planes[1][i]) << 8 | code(planes[2][i]);
            image.setRGB(i % width, i / width, rgb);
        }
        return image;
    }

    private static int code(float linear) {
        double v = Math.max(0, Math.min(1, linear));
        double coded = v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1 / 2.4) - 0.055;
        return (int) Math.round(255 * coded);
    }
}
