package org.tidegate.examination.picture.mrz;

/**
 * A long thin row of dark marks.
 *
 * @param x its middle, like y in pixels
 * @param angle of its length against the x axis, radians, −π/2 to π/2
 * @param length as long as an even bar of the same spread
 * @param height likewise across
 * @param ink share of that bar that is dark
 */
record Strand(double x, double y, double angle, double length, double height, double ink) {

    Strand scaled(double factor) {
        return new Strand(
                (x + 0.5) * factor - 0.5, (y + 0.5) * factor - 0.5, angle, length * factor, height * factor, ink);
    }

    double along(Strand other) {
        return (other.x - x) * Math.cos(angle) + (other.y - y) * Math.sin(angle);
    }

    double across(Strand other) {
        return (other.y - y) * Math.cos(angle) - (other.x - x) * Math.sin(angle);
    }

    /** Whether both run the same way, but for so much. */
    boolean isParallel(Strand other, double within) {
        double turn = Math.abs(angle - other.angle);
        return Math.min(turn, Math.PI - turn) <= within;
    }

    /** Whether the other one goes on where this one ends. */
    boolean continues(Strand other) {
        double gap = Math.abs(along(other)) - (length + other.length) / 2;
        return isParallel(other, 0.15)
                && Math.abs(across(other)) < 0.8 * Math.max(height, other.height)
                && gap < 4 * height
                && gap > -0.3 * Math.min(length, other.length);
    }

    /** Both as one. */
    Strand joined(Strand other) {
        double share = length / (length + other.length);
        double from = Math.min(-length / 2, along(other) - other.length / 2);
        double to = Math.max(length / 2, along(other) + other.length / 2);
        double middle = (from + to) / 2;
        double off = (1 - share) * across(other);
        double turn = Math.atan2(across(other), along(other));
        double steady = along(other) < 0 ? turn + (turn < 0 ? Math.PI : -Math.PI) : turn;
        return new Strand(
                x + middle * Math.cos(angle) - off * Math.sin(angle),
                y + middle * Math.sin(angle) + off * Math.cos(angle),
                angle + 0.5 * steady,
                to - from,
                share * height + (1 - share) * other.height,
                share * ink + (1 - share) * other.ink);
    }
}
