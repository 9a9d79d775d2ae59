package org.tidegate.thirdhand;

/**
 * The key light.
 *
 * @param dx towards it, for one step up
 * @param dy the same along y
 * @param soft its size as seen from the table, as the tangent
 * @param x its place, mm, which counts for near lamps
 * @param height over the table, mm
 */
record Lamp(
        LampKind kind,
        double dx,
        double dy,
        double soft,
        Rgb colour,
        Rgb around,
        boolean coloured,
        double x,
        double y,
        double height) {

    private static final double SMALLEST_MIRRORED = 0.03;

    /** @param span the picture's long side on the table, mm */
    static Lamp drawn(Draws draws, double span, double centreX, double centreY) {
        LampKind kind = draws.oneOf(LampKind.values());
        double azimuth = draws.turn();
        double slant = kind.slant(draws);
        double soft = kind.softness(draws);
        double dx = slant * Math.cos(azimuth);
        double dy = slant * Math.sin(azimuth);
        double warmth = kind.warmth(draws);
        double ambient = draws.chance(0.3) ? draws.between(-0.25, 0.3) : warmth * 0.5;
        boolean coloured = draws.chance(0.06);
        Rgb colour = coloured
                ? new Rgb(1.15, 0.85, draws.between(0.7, 1.3))
                : new Rgb(1 + warmth * 0.5, 1, 1 - warmth * 0.9);
        Rgb around = new Rgb(1 + ambient * 0.5, 1, 1 - ambient * 0.8);
        double height = span * (kind == LampKind.FLASH ? draws.between(0.8, 1.2) : draws.between(1, 2.6));
        return new Lamp(
                kind, dx, dy, soft, colour, around, coloured, centreX + dx * height, centreY + dy * height, height);
    }

    /** Large shadows' edges take more rays. */
    boolean large() {
        return soft > 0.04;
    }

    /** How a near lamp falls off, 1 at the picture's middle. */
    double falloff(double atX, double atY) {
        if (!kind.near) {
            return 1;
        }
        double away = (atX - x) * (atX - x) + (atY - y) * (atY - y) + height * height;
        return Math.pow(height * height * (1 + dx * dx + dy * dy) / away, 1.2);
    }

    /** What a level surface at a place takes of it, by the angle, for a normal. */
    double facing(double atX, double atY, Vector normal) {
        double lx = kind.near ? (x - atX) / height : dx;
        double ly = kind.near ? (y - atY) / height : dy;
        double cosine = (normal.x() * lx + normal.y() * ly + normal.z()) / Math.sqrt(1 + lx * lx + ly * ly);
        return Math.max(0, cosine) * Math.sqrt(1 + dx * dx + dy * dy);
    }

    /** Its mirror image in a direction given for one step up. */
    double mirrored(double rx, double ry, double rough) {
        double spread = Math.max(soft, SMALLEST_MIRRORED) + rough * 0.5;
        double off = (rx - dx) * (rx - dx) + (ry - dy) * (ry - dy);
        double peak = 0.12 / (spread * spread + 0.004);
        return Math.min(Math.exp(-off / (spread * spread)) * peak, 40) * kind.key;
    }
}
