package org.tidegate.otherhand;

import java.awt.Color;

/** Woven and printed cloths with soft folds. */
final class Cloths {

    private static final int[] COLOURS = {
        0xb8433f, 0x2f5f8f, 0x4f7f5a, 0xd9b24a, 0x7a6a9a, 0x8f8f8c, 0xc8b8a0, 0x2c3440, 0xd07a8a, 0x5fa0a8
    };

    private Cloths() {}

    private static double folds(Noise noise, double x, double y) {
        return 0.86 + 0.28 * noise.rough(x / 70, y / 45, 2);
    }

    private static double threads(double x, double y, double pitch) {
        return 0.95 + 0.05 * Math.sin(2 * Math.PI * x / pitch) * Math.sin(2 * Math.PI * y / pitch);
    }

    static Tabletop.Surface weave(Noise noise, Draw draw) {
        Color ground = draw.colour(20, COLOURS);
        double pitch = draw.between(0.9, 2.2);
        return (x, y) -> Tabletop.mix(
                ground,
                ground,
                0,
                folds(noise, x, y) * threads(x, y, pitch) * (0.93 + 0.14 * noise.at(x * 0.9, y * 2)));
    }

    static Tabletop.Surface gingham(Noise noise, Draw draw) {
        Color one = draw.colour(10, 0xf2f0ea, 0xe8e2d4, 0xeeeeee);
        Color other = draw.colour(20, COLOURS);
        double size = draw.between(7, 26);
        return (x, y) -> {
            int across = Math.floorMod((int) Math.floor(x / size), 2);
            int along = Math.floorMod((int) Math.floor(y / size), 2);
            return Tabletop.mix(one, other, 0.45 * (across + along), folds(noise, x, y) * threads(x, y, 1.3));
        };
    }

    static Tabletop.Surface dotted(Noise noise, Draw draw) {
        Color ground = draw.colour(20, COLOURS);
        Color dot = draw.colour(12, 0xf2f0ea, 0xe8d8b0, 0x30343c);
        double pitch = draw.between(14, 32);
        double radius = pitch * draw.between(0.14, 0.3);
        return (x, y) -> {
            double dx = x - pitch * Math.rint(x / pitch);
            double dy = y - pitch * Math.rint(y / pitch);
            double in = (radius - Math.hypot(dx, dy)) * 3;
            return Tabletop.mix(ground, dot, in, folds(noise, x, y) * threads(x, y, 1.1));
        };
    }

    static Tabletop.Surface quilt(Noise noise, Draw draw) {
        Color ground = draw.colour(14, 0xe8e4dc, 0xd6dce2, 0xb0a090, 0x8a3f4a, 0x46587a, 0xc9d0c0);
        double size = draw.between(28, 55);
        double puff = draw.between(0.08, 0.2);
        return (x, y) -> {
            double u = (x + y) / size;
            double v = (x - y) / size;
            double swell = Math.abs(Math.sin(Math.PI * u) * Math.sin(Math.PI * v));
            double lit = Math.cos(Math.PI * (u - Math.floor(u))) * 0.5;
            return Tabletop.mix(ground, ground, 0, 0.84 + puff * (Math.sqrt(swell) + lit) + 0.06 * noise.at(x, y));
        };
    }

    static Tabletop.Surface floral(Noise noise, Draw draw) {
        Color ground = draw.colour(12, 0xece4d4, 0xd8e0e8, 0x2c3448, 0xe8d8d8);
        Color petal = draw.colour(20, COLOURS);
        Color leaf = draw.colour(16, 0x5a7a4a, 0x3f5f50, 0x8a8f4a);
        double cell = draw.between(26, 48);
        return (x, y) -> {
            int i = (int) Math.floor(x / cell);
            int j = (int) Math.floor(y / cell);
            double dx = x - (i + 0.35 + 0.3 * noise.point(i, j)) * cell;
            double dy = y - (j + 0.35 + 0.3 * noise.point(j, i + 9)) * cell;
            double r = Math.hypot(dx, dy) / cell;
            double round = Math.atan2(dy, dx) + 6 * noise.point(i + 3, j);
            double flower = (0.24 + 0.07 * Math.cos(5 * round) - r) * 30;
            double leaves = (0.34 * Math.max(0, Math.cos(1.5 * round)) - r) * 20;
            double shade = folds(noise, x, y) * threads(x, y, 1.2);
            return flower > 0
                    ? Tabletop.mix(petal, ground, r < 0.07 ? 0.8 : 0.25 * r * 4, shade)
                    : Tabletop.mix(ground, leaf, leaves, shade);
        };
    }
}
