package org.tidegate.otherhand;

import java.awt.Color;
import java.awt.image.BufferedImage;

/** The membrane under the window: its colour, wash, stains and the dyed lines, in linear reflectance. */
final class Strip {

    private static final double PIXELS = 22;

    private final double length;
    private final double[] membrane;
    private final double[] dye;
    private final double thick;
    private final double leading;
    private final double trailing;
    private final double peak;
    private final double slant;
    private final double wash;
    private final double washTo;
    private final double uneven;
    private final double testAt;
    private final double controlAt;
    private final Noise stains;

    /** The kit's fractions of the window's length for T and C stand in {@code rules/protocols.yaml}. */
    Strip(double length, double[] dye, Draw draw) {
        this.length = length;
        this.dye = dye;
        Color base = draw.colour(8, 0xf0ede6, 0xf3f0ea, 0xeceae6, 0xe8e2d6, 0xf2ecec);
        membrane = new double[] {Tone.linear(base.getRed()), Tone.linear(base.getGreen()), Tone.linear(base.getBlue())};
        thick = draw.between(0.75, 1.25);
        leading = draw.between(0.03, 0.12);
        trailing = draw.between(0.04, 0.2);
        peak = peak();
        slant = draw.bell(0, 0.02);
        wash = draw.chance(0.5) ? draw.mostlyLow(0.02, 0.2) : 0;
        washTo = draw.between(0, 1);
        uneven = draw.mostlyLow(0.02, 0.25);
        testAt = (0.36 + draw.bell(0, 0.008)) * length;
        controlAt = (0.70 + draw.bell(0, 0.008)) * length;
        stains = new Noise(draw.seed());
    }

    /** Dye of red, purple, pink or blue: how much of the contrast each of the channels takes. */
    static double[] dye(Draw draw) {
        double[] dye = draw.oneOf(
                new double[] {0.35, 1, 0.70},
                new double[] {0.22, 1, 0.62},
                new double[] {0.48, 1, 0.60},
                new double[] {0.30, 1, 0.85},
                new double[] {1, 0.72, 0.25});
        for (int i = 0; i < 3; i++) {
            dye[i] = dye[i] == 1 ? 1 : dye[i] + draw.between(-0.06, 0.06);
        }
        return dye;
    }

    BufferedImage image(double breadth, double test, double control) {
        int w = (int) Math.round(length * PIXELS);
        int h = (int) Math.round(breadth * PIXELS);
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        for (int j = 0; j < h; j++) {
            for (int i = 0; i < w; i++) {
                image.setRGB(i, j, at((i + 0.5) / PIXELS, (j + 0.5) / PIXELS, breadth, test, control));
            }
        }
        return image;
    }

    private int at(double x, double y, double breadth, double test, double control) {
        double shifted = x - slant * (y - breadth / 2) + 0.1 * (stains.at(y * 0.8, 40) - 0.5);
        double even = 1 - uneven * Math.max(0, stains.rough(x * 1.5, y * 1.2, 2) - 0.3);
        double dyed = even * Math.max(test * profile(shifted - testAt), control * profile(shifted - controlAt));
        double fade = 1 - Math.abs(x / length - washTo);
        double pink = wash * fade * (0.7 + 0.6 * stains.rough(x * 0.3, y * 0.5, 2));
        double grain = 1 - 0.03 * stains.rough(x * 2, y * 2, 3);
        int rgb = 0;
        for (int c = 0; c < 3; c++) {
            rgb = rgb << 8 | Tone.code(membrane[c] * grain * (1 - pink * dye[c]) * (1 - dyed * dye[c]));
        }
        return rgb;
    }

    private double profile(double off) {
        return bump(off) / peak;
    }

    private double peak() {
        double most = 0;
        for (double off = -thick / 2; off < thick / 2; off += 0.02) {
            most = Math.max(most, bump(off));
        }
        return most;
    }

    private double bump(double off) {
        double rise = 1 / (1 + Math.exp(-(off + thick / 2) / leading));
        double fall = 1 / (1 + Math.exp((off - thick / 2) / trailing));
        return rise * fall;
    }
}
