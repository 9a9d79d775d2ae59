package org.tidegate.thirdhand;

/** Curves of one number. */
final class Curves {

    private Curves() {}

    static double clamp(double value, double low, double high) {
        return value < low ? low : value > high ? high : value;
    }

    static double mix(double a, double b, double t) {
        return a + (b - a) * t;
    }

    /** 0 at {@code zero}, 1 at {@code one}, smooth between, flat beyond; {@code zero} may be the higher. */
    static double step(double zero, double one, double value) {
        double t = clamp((value - zero) / (one - zero), 0, 1);
        return t * t * (3 - 2 * t);
    }

    static double bump(double distance, double width) {
        return Math.exp(-Math.pow(distance / width, 2));
    }

    /** The part after the point, for negative values too. */
    static double cycle(double value) {
        return value - Math.floor(value);
    }
}
