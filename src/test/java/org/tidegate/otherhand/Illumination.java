package org.tidegate.otherhand;

import java.awt.geom.Rectangle2D;

/** Light that changes over the table: a slope, the shadow of phone or person, an edge of sun, blinds, and the lens's corners. */
final class Illumination {

    private final double slopeX;
    private final double slopeY;
    private final double corners;
    private final int kind;
    private final double x;
    private final double y;
    private final double cos;
    private final double sin;
    private final double halfLong;
    private final double halfShort;
    private final double soft;
    private final double depth;

    Illumination(Rectangle2D view, Draw draw) {
        slopeX = draw.bell(0, 0.16) / view.getWidth();
        slopeY = draw.bell(0, 0.16) / view.getHeight();
        corners = draw.mostlyLow(0, 0.4);
        double lot = draw.between(0, 1);
        kind = lot < 0.4 ? 0 : lot < 0.65 ? 1 : lot < 0.92 ? 2 : 3;
        x = view.getCenterX() + draw.bell(0, 0.22) * view.getWidth();
        y = view.getCenterY() + draw.bell(0, 0.22) * view.getHeight();
        double angle = draw.turn();
        cos = Math.cos(angle);
        sin = Math.sin(angle);
        halfLong = draw.between(70, 95);
        halfShort = kind == 3 ? draw.between(14, 40) : draw.between(34, 50);
        soft = draw.mostlyLow(2, 45);
        depth = draw.between(0.15, kind == 3 ? 0.4 : 0.62);
    }

    /** Factor at a point of the table; {@code corner} is 1 in the picture's corners. */
    double at(double px, double py, double corner) {
        double u = px - x;
        double v = py - y;
        double even = Math.max(0.35, 1 + slopeX * u * 2 + slopeY * v * 2) * (1 - corners * corner);
        double along = u * cos + v * sin;
        double across = v * cos - u * sin;
        return even * (1 - depth * shadow(along, across));
    }

    private double shadow(double along, double across) {
        return switch (kind) {
            case 1 ->
                step(-Math.hypot(
                                Math.max(0, Math.abs(along) - halfLong + 8),
                                Math.max(0, Math.abs(across) - halfShort + 8))
                        + 8);
            case 2 -> step(across);
            case 3 -> step(halfShort * 0.4 * Math.sin(Math.PI * across / halfShort));
            default -> 0;
        };
    }

    private double step(double inside) {
        double t = Math.max(0, Math.min(1, 0.5 + inside / soft));
        return t * t * (3 - 2 * t);
    }
}
