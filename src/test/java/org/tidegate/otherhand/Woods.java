package org.tidegate.otherhand;

import java.awt.Color;

/** Wooden tops: grain along x, in planks or of one piece. */
final class Woods {

    private static final int[] PALE = {0xd8b48a, 0xc69a6a, 0xa8744a, 0x8a5a3a, 0x5e3e2a, 0x3c2a20, 0xb9a48c, 0xe2c9a2};

    private Woods() {}

    static Tabletop.Surface planks(Noise noise, Draw draw) {
        Color pale = draw.colour(14, PALE);
        Color dark = Light.shade(pale, draw.between(0.55, 0.8));
        double wide = draw.between(45, 130);
        double seam = draw.between(0.3, 1.2);
        double ring = draw.between(3, 11);
        return (x, y) -> {
            int plank = (int) Math.floor(y / wide);
            double in = y - plank * wide;
            double tone = 0.88 + 0.2 * noise.point(plank, 77);
            double own = x + 300 * noise.point(plank, 5);
            if (in < seam) {
                return Tabletop.mix(dark, dark, 0, 0.45);
            }
            return grain(noise, pale, dark, own, y, ring, tone);
        };
    }

    static Tabletop.Surface plain(Noise noise, Draw draw) {
        Color pale = draw.colour(14, PALE);
        Color dark = Light.shade(pale, draw.between(0.6, 0.85));
        double ring = draw.between(4, 16);
        return (x, y) -> grain(noise, pale, dark, x, y, ring, 1);
    }

    private static int grain(Noise noise, Color pale, Color dark, double x, double y, double ring, double tone) {
        double bent = (y + 14 * noise.at(x / 130, y / 40) + 3 * noise.at(x / 35, y / 12)) / ring;
        int year = (int) Math.floor(bent);
        double in = bent - year;
        double rings = noise.point(year, 31) * in * in + 0.35 * noise.rough(x / 60, y / 7, 3);
        double fibre = noise.at(x / 9, y * 2.6);
        double pore = noise.at(x / 4, y * 4) > 0.86 ? 0.86 : 1;
        return Tabletop.mix(pale, dark, 0.7 * rings + 0.4 * fibre - 0.15, tone * pore);
    }
}
