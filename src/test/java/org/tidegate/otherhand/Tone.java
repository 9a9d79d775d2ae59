package org.tidegate.otherhand;

/** sRGB (IEC 61966-2-1) code to linear light and back. */
final class Tone {

    private static final int STEPS = 8192;
    private static final double[] LINEAR = new double[256];
    private static final byte[] CODE = new byte[STEPS + 1];

    static {
        for (int i = 0; i < 256; i++) {
            double v = i / 255.0;
            LINEAR[i] = v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
        }
        for (int i = 0; i <= STEPS; i++) {
            CODE[i] = (byte) Math.round(255 * curve(i / (double) STEPS));
        }
    }

    private Tone() {}

    static double linear(int code) {
        return LINEAR[code];
    }

    static int code(double linear) {
        return CODE[(int) (Math.max(0, Math.min(1, linear)) * STEPS + 0.5)] & 255;
    }

    /** 0 to 1, not rounded. */
    static double curve(double linear) {
        return linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
    }
}
