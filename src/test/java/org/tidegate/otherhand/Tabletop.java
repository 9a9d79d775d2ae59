package org.tidegate.otherhand;

import java.awt.Color;
import java.awt.image.BufferedImage;

/** What things lie on: wood, cloth, marble, desk, patterned cloth, paper, bedspread, speckled top. */
final class Tabletop {

    interface Surface {
        /** Packed sRGB at a point of the table. */
        int at(double x, double y);
    }

    private final Surface surface;
    private final double cos;
    private final double sin;
    final boolean shiny;

    private Tabletop(Surface surface, boolean shiny, double angle) {
        this.surface = surface;
        this.shiny = shiny;
        cos = Math.cos(angle);
        sin = Math.sin(angle);
    }

    static Tabletop drawn(Draw draw) {
        Noise noise = new Noise(draw.seed());
        double angle = draw.turn();
        return switch (draw.whole(0, 12)) {
            case 0, 1, 2 -> new Tabletop(Woods.planks(noise, draw), true, angle);
            case 3 -> new Tabletop(Woods.plain(noise, draw), true, angle);
            case 4 -> new Tabletop(marble(noise, draw), true, angle);
            case 5 -> new Tabletop(desk(noise, draw), true, angle);
            case 6 -> new Tabletop(speckled(noise, draw), true, angle);
            case 7 -> new Tabletop(paper(noise, draw), false, angle);
            case 8 -> new Tabletop(Cloths.weave(noise, draw), false, angle);
            case 9 -> new Tabletop(Cloths.gingham(noise, draw), false, angle);
            case 10 -> new Tabletop(Cloths.dotted(noise, draw), false, angle);
            case 11 -> new Tabletop(Cloths.quilt(noise, draw), false, angle);
            default -> new Tabletop(Cloths.floral(noise, draw), false, angle);
        };
    }

    /** Fills the picture, whose pixel (0, 0) is the table's (left, top). */
    void fill(BufferedImage image, double left, double top, double pixels) {
        int[] row = new int[image.getWidth()];
        for (int j = 0; j < image.getHeight(); j++) {
            double y = top + j / pixels;
            for (int i = 0; i < row.length; i++) {
                double x = left + i / pixels;
                row[i] = surface.at(x * cos + y * sin, y * cos - x * sin);
            }
            image.setRGB(0, j, row.length, 1, row, 0, row.length);
        }
    }

    static int mix(Color one, Color other, double share, double shade) {
        double s = Math.max(0, Math.min(1, share));
        return part(one.getRed(), other.getRed(), s, shade) << 16
                | part(one.getGreen(), other.getGreen(), s, shade) << 8
                | part(one.getBlue(), other.getBlue(), s, shade);
    }

    private static int part(int one, int other, double share, double shade) {
        return (int) Math.max(0, Math.min(255, (one + (other - one) * share) * shade));
    }

    private static Surface marble(Noise noise, Draw draw) {
        Color ground = draw.colour(12, 0xe6e4e0, 0xd8d8d6, 0x3a3c40, 0xc9beb0);
        Color vein = draw.colour(15, 0x8f9094, 0xa89a86, 0xd0d0d0, 0x6d7074);
        double size = draw.between(25, 70);
        return (x, y) -> {
            double bend = noise.rough(x / size, y / size, 4);
            double v = Math.abs(Math.sin(3.1 * (x / size + 2.5 * bend)));
            double fine = 0.96 + 0.08 * noise.at(x * 1.2, y * 1.2);
            return mix(vein, ground, Math.min(1, 0.25 + v * 1.6 + 0.3 * bend), fine);
        };
    }

    private static Surface desk(Noise noise, Draw draw) {
        Color ground = draw.colour(14, 0x2a2a2e, 0x3c3530, 0x1e2226, 0xd9d9d6, 0x55585c, 0xeaeae6);
        return (x, y) -> mix(
                ground, ground, 0, 0.93 + 0.06 * noise.rough(x / 30, y / 30, 2) + 0.08 * noise.at(x * 2.2, y * 2.2));
    }

    private static Surface speckled(Noise noise, Draw draw) {
        Color ground = draw.colour(14, 0x8f8a84, 0xb8b2a8, 0x3a3a3c, 0xd2cfc8);
        Color dark = draw.colour(14, 0x4c4a48, 0x6a5a50, 0x30302e);
        Color bright = draw.colour(10, 0xe8e6e2, 0xc0b8b0);
        double grain = draw.between(0.6, 1.6);
        return (x, y) -> {
            double n = noise.rough(x * grain, y * grain, 2);
            return n < 0.38 ? mix(dark, ground, n / 0.38, 1) : mix(ground, bright, (n - 0.38) * 2.2, 1);
        };
    }

    private static Surface paper(Noise noise, Draw draw) {
        Color ground = draw.colour(10, 0xe9e6de, 0xb8946a, 0xf0f0ee, 0xc8d2d8);
        double size = draw.between(14, 40);
        double deep = draw.between(0.1, 0.35);
        return (x, y) -> {
            double a = noise.rough(x / size, y / size, 3);
            double b = noise.rough((x + 1.5) / size, (y + 1) / size, 3);
            double ridge = Math.abs(a - 0.5) * 2;
            return mix(ground, ground, 0, 0.92 + 5 * deep * (a - b) + deep * 0.4 * (ridge - 0.3));
        };
    }
}
