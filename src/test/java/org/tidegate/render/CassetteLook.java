package org.tidegate.render;

import java.awt.Color;
import java.util.List;

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

    private static final List<Color> BODIES = List.of(
            new Color(244, 243, 240),
            new Color(250, 250, 250),
            new Color(236, 239, 243),
            new Color(240, 232, 226),
            new Color(226, 236, 228));

    private static final List<Color> BODIES_KEPT =
            List.of(new Color(226, 230, 244), new Color(246, 238, 214), new Color(228, 226, 222));

    /** Absorbed shares of red, green and blue against green, as a colour: red-purple gold, red latex. */
    private static final List<Color> DYES = List.of(new Color(70, 255, 165), new Color(40, 255, 190));

    /** Blue latex. */
    private static final List<Color> DYES_KEPT = List.of(new Color(255, 215, 60), new Color(90, 255, 150));

    private static final String MARKS = "ACEFHJKLMNPQRTUVWXY3479";

    static CassetteLook drawn(Draws d, double t, double c) {
        double length = d.in(66, 76, 76, 80);
        double width = d.in(19.5, 23, 18.5, 19.5);
        return new CassetteLook(
                length,
                width,
                d.in(1, 4),
                length * d.in(0.19, 0.24),
                d.in(6, 9),
                Well.values()[d.random().nextInt(3)],
                length * d.in(0.36, 0.44),
                d.in(14, 20),
                width * d.in(0.24, 0.36),
                d.in(0.5, 1.2, 1.2, 1.5),
                new double[] {d.in(0.32, 0.4), d.in(0.64, 0.74)},
                t,
                c,
                d.in(0.7, 1.2),
                d.of(BODIES, BODIES_KEPT),
                d.of(DYES, DYES_KEPT),
                !d.oneIn(8),
                d.oneIn(6) ? "" : d.of(List.of("SKERRY-20", "AG TEST"), List.of("RAPID 1", "LOT 2604")),
                d.oneIn(2) ? writing(d) : "");
    }

    private static String writing(Draws d) {
        StringBuilder mark = new StringBuilder();
        for (int i = 0; i < 4; i++) {
            mark.append(MARKS.charAt(d.random().nextInt(MARKS.length())));
        }
        return mark + " 4.5 0" + (6 + d.random().nextInt(3)) + ":"
                + (10 + d.random().nextInt(50));
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
                BODIES.get(0),
                DYES.get(0),
                true,
                "SKERRY-20",
                writing);
    }
}
