package org.tidegate.render;

import java.awt.Color;
import java.util.Random;

/**
 * How one cassette looks, millimetres from the end where the sample goes on.
 *
 * @param wellAt centre of the sample well along the length
 * @param windowFrom start of the result window along the length
 * @param at places of T and C along the window, 0–1 from the sample end
 * @param t strength of the test line, 0–1; 0 for none
 * @param c strength of the control line
 * @param writing what the participant wrote on it; empty for nothing
 */
record CassetteLook(
        double length,
        double width,
        double radius,
        double wellAt,
        double wellSize,
        Well well,
        double windowFrom,
        double windowLength,
        double windowWidth,
        double rim,
        double[] at,
        double t,
        double c,
        double lineWidth,
        Color body,
        Color dye,
        boolean letters,
        String label,
        String writing) {

    enum Well {
        ROUND,
        OVAL,
        DROP
    }

    private static final Color[] BODIES = {
        new Color(244, 243, 240),
        new Color(250, 250, 250),
        new Color(236, 239, 243),
        new Color(240, 232, 226),
        new Color(226, 236, 228),
        new Color(226, 230, 244),
        new Color(246, 238, 214)
    };

    /** Absorbed shares of red, green and blue against green, as a colour: red-purple gold, red latex, blue latex. */
    private static final Color[] DYES = {new Color(70, 255, 165), new Color(40, 255, 190), new Color(255, 215, 60)};

    /** @param unseen draw from the ranges kept for the final measurement */
    static CassetteLook random(Random r, double t, double c, boolean unseen) {
        double length = 66 + 10 * r.nextDouble() + (unseen ? 2 : 0);
        double width = 19.5 + 3.5 * r.nextDouble();
        double windowLength = 14 + 6 * r.nextDouble();
        double windowFrom = length * (0.36 + 0.08 * r.nextDouble());
        return new CassetteLook(
                length,
                width,
                1 + 3 * r.nextDouble(),
                length * (0.19 + 0.05 * r.nextDouble()),
                6 + 3 * r.nextDouble(),
                Well.values()[r.nextInt(3)],
                windowFrom,
                windowLength,
                width * (0.24 + 0.12 * r.nextDouble()),
                0.5 + 0.7 * r.nextDouble(),
                new double[] {0.32 + 0.08 * r.nextDouble(), 0.64 + 0.1 * r.nextDouble()},
                t,
                c,
                0.7 + 0.5 * r.nextDouble(),
                BODIES[r.nextInt(unseen ? BODIES.length : BODIES.length - 2)],
                DYES[Math.max(0, r.nextInt(unseen ? 6 : 5) - 3)],
                r.nextInt(8) > 0,
                r.nextInt(6) > 0 ? "SKERRY-20" : "",
                "");
    }

    /** The kit of the invented clinic. */
    static CassetteLook skerry20(double t, double c, String writing) {
        return new CassetteLook(
                70,
                21,
                2,
                15,
                7.5,
                Well.ROUND,
                27,
                17.5,
                7,
                0.9,
                new double[] {0.36, 0.7},
                t,
                c,
                0.9,
                BODIES[0],
                DYES[0],
                true,
                "SKERRY-20",
                writing);
    }
}
