package org.tidegate.thirdhand;

/** What stands in the light from farther off: foliage, bars of a window, the phone and the hand that holds it. */
final class Shading {

    private final int seed;
    private final double span;
    private final double patches;
    private final boolean bars;
    private final double barTurn;
    private final double barWidth;
    private final double barPlace;
    private final boolean phone;
    private final double phoneX;
    private final double phoneY;
    private final double phoneSize;
    private final double phoneSoft;

    Shading(Draws draws, LampKind kind, double span, double centreX, double centreY) {
        this.span = span;
        seed = draws.noiseSeed();
        patches = draws.chance(0.35) ? draws.between(0.2, 0.7) : draws.between(0, 0.15);
        bars = kind == LampKind.SUN && draws.chance(0.4);
        barTurn = draws.between(0, Math.PI);
        barWidth = span * draws.between(0.15, 0.5);
        barPlace = draws.share();
        phone = draws.chance(0.25);
        phoneX = centreX + draws.between(-0.6, 0.6) * span;
        phoneY = centreY + draws.between(-0.7, -0.1) * span;
        phoneSize = span * draws.between(0.2, 0.45);
        phoneSoft = phoneSize * draws.between(0.1, 0.6);
    }

    String story() {
        return (bars ? "+bars" : "") + (phone ? "+phone shadow" : "");
    }

    /** What is left at a place of the table, 0 to 1, by foliage and the like. */
    double patches(double x, double y) {
        double cloud = Noise.rough(x / span * 1.3 + 7, y / span * 1.3, seed, 2);
        return 1 - patches * Curves.step(0.3, 0.7, cloud);
    }

    /** The same by bars and phone. */
    double shapes(double x, double y) {
        return bar(x, y) * phone(x, y);
    }

    private double bar(double x, double y) {
        if (!bars) {
            return 1;
        }
        double t = Curves.cycle((x * Math.cos(barTurn) + y * Math.sin(barTurn)) / barWidth + barPlace);
        return 1 - 0.93 * Curves.step(0, 0.015, t) * (1 - Curves.step(0.33, 0.345, t));
    }

    private double phone(double x, double y) {
        if (!phone) {
            return 1;
        }
        double edge = Distances.roundedBox(x - phoneX, y - phoneY, phoneSize * 1.2, phoneSize * 0.7, phoneSize * 0.3);
        return 1 - 0.75 * (1 - Curves.step(-phoneSoft, phoneSoft, edge));
    }
}
