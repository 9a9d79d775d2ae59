package org.tidegate.thirdhand;

/** A rainbow rosette on about half of the documents; a lot below one half is none, else it is the place. */
record Hologram(double lot, double width, double height) {

    private static final double RADIUS = 11;

    Rgb over(double u, double v, Rgb painted) {
        if (lot < 0.5 || Math.abs(u) > width / 2 || Math.abs(v) > height / 2) {
            return painted;
        }
        double du = u - (lot - 0.75) * 2.4 * width * 0.4;
        double dv = v - (lot * 37 % 1 - 0.6) * height * 0.5;
        double r = Distances.length(du, dv);
        if (r > RADIUS) {
            return painted;
        }
        double rosette = 0.5 + 0.5 * Math.sin(r * 2.6 + 4 * Math.sin(Math.atan2(dv, du) * 6));
        Rgb rainbow = Rgb.ofHsv((u * 0.035 + v * 0.05 + lot * 9) % 1, 0.55, 0.95);
        return painted.mix(rainbow, 0.42 * rosette * Curves.step(RADIUS, RADIUS - 1.5, r));
    }
}
