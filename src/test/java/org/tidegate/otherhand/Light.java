package org.tidegate.otherhand;

import java.awt.Color;

/**
 * The main light as a thing on the table feels it.
 *
 * @param x where shadows fall, unit vector with {@code y}
 * @param slope how far a shadow falls for a millimetre of height
 * @param depth how dark a cast shadow is, 0 to 1
 * @param spread how wide its edge is for a millimetre of height
 */
record Light(double x, double y, double slope, double depth, double spread) {

    static Light drawn(Draw draw) {
        double angle = draw.turn();
        boolean hard = draw.chance(0.3);
        return new Light(
                Math.cos(angle),
                Math.sin(angle),
                draw.between(0.2, 1.1),
                hard ? draw.between(0.35, 0.6) : draw.between(0.12, 0.4),
                hard ? draw.between(0.1, 0.3) : draw.between(0.4, 1.3));
    }

    /** The same light in the coordinates of a thing turned by {@code angle}. */
    Light seenFrom(double angle) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return new Light(x * cos + y * sin, -x * sin + y * cos, slope, depth, spread);
    }

    /** The colour of a face that leans towards (nx, ny): lit when it faces the light. */
    Color on(Color base, double nx, double ny, double strength) {
        return shade(base, 1 - strength * (nx * x + ny * y));
    }

    static Color shade(Color base, double factor) {
        return new Color(part(base.getRed() * factor), part(base.getGreen() * factor), part(base.getBlue() * factor));
    }

    static Color faint(Color base, double alpha) {
        return new Color(base.getRed(), base.getGreen(), base.getBlue(), part(alpha * 255));
    }

    static Color mix(Color one, Color other, double share) {
        return new Color(
                part(one.getRed() + (other.getRed() - one.getRed()) * share),
                part(one.getGreen() + (other.getGreen() - one.getGreen()) * share),
                part(one.getBlue() + (other.getBlue() - one.getBlue()) * share));
    }

    private static int part(double value) {
        return (int) Math.max(0, Math.min(255, Math.round(value)));
    }
}
