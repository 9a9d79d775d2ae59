package org.tidegate.thirdhand;

import java.awt.Color;

/** Linear light, 1 for white paper. */
record Rgb(double red, double green, double blue) {

    private static final double[] LINEAR = new double[256];

    static {
        for (int i = 0; i < LINEAR.length; i++) {
            double c = i / 255.0;
            LINEAR[i] = c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
        }
    }

    /** @param packed sRGB (IEC 61966-2-1) code, red in bits 16 to 23 */
    static Rgb ofCode(int packed) {
        return new Rgb(LINEAR[packed >> 16 & 255], LINEAR[packed >> 8 & 255], LINEAR[packed & 255]);
    }

    static Rgb ofHsv(double hue, double saturation, double value) {
        return ofCode(Color.HSBtoRGB((float) hue, (float) saturation, (float) value));
    }

    static Rgb grey(double value) {
        return new Rgb(value, value, value);
    }

    /** From linear light to sRGB, 0 to 1. */
    static double curve(double linear) {
        if (linear <= 0) {
            return 0;
        }
        return linear <= 0.0031308 ? linear * 12.92 : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
    }

    Rgb times(double factor) {
        return new Rgb(red * factor, green * factor, blue * factor);
    }

    Rgb times(double onRed, double onGreen, double onBlue) {
        return new Rgb(red * onRed, green * onGreen, blue * onBlue);
    }

    Rgb times(Rgb filter) {
        return times(filter.red, filter.green, filter.blue);
    }

    Rgb plus(Rgb other) {
        return new Rgb(red + other.red, green + other.green, blue + other.blue);
    }

    Rgb mix(Rgb other, double t) {
        return new Rgb(
                Curves.mix(red, other.red, t), Curves.mix(green, other.green, t), Curves.mix(blue, other.blue, t));
    }
}
