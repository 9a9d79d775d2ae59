package org.tidegate.render;

import java.awt.Color;
import java.util.List;
import java.util.Random;

/**
 * How an invented identity document looks.
 *
 * @param lines print beside the portrait, from the top
 * @param zone lines of a machine-readable zone; empty for none
 */
record CardLook(
        Format format,
        String title,
        Color paper,
        Color header,
        Skin skin,
        boolean portraitLeft,
        List<String> lines,
        List<String> zone) {

    /** ISO/IEC 7810 formats, millimetres. */
    enum Format {
        ID_1(85.6, 53.98),
        ID_3(125, 88);

        final double width;
        final double height;

        Format(double width, double height) {
            this.width = width;
            this.height = height;
        }
    }

    record Skin(Color face, Color hair, Color clothes) {}

    private static final String[] GIVEN = {"ROBIN", "MAREN", "ISLA", "TOMAS", "NADIRA", "EWAN", "LUCIE", "OMAR"};
    private static final String[] FAMILY = {"STRAKER", "HAVENOCK", "BRINEWELL", "DUNLARE", "KELSO-REY", "TARNWICK"};
    private static final String[] MONTHS = {"JAN", "MAR", "MAY", "JUL", "SEP", "NOV"};
    private static final String[] TITLES = {"CREW PASS", "IDENTITY CARD", "DRIVING LICENCE", "PASSPORT"};
    private static final Color[] PAPERS = {
        new Color(246, 240, 228), new Color(228, 238, 246), new Color(240, 228, 236), new Color(232, 242, 228)
    };
    private static final Color[] HEADERS = {
        new Color(20, 80, 92), new Color(44, 56, 120), new Color(120, 40, 72), new Color(60, 90, 50)
    };
    private static final Color[] FACES = {
        new Color(238, 200, 170), new Color(214, 164, 126), new Color(150, 100, 70), new Color(96, 64, 48)
    };
    private static final Color[] HAIR = {
        new Color(40, 30, 24), new Color(100, 60, 30), new Color(190, 160, 90), new Color(130, 130, 130)
    };

    private static final List<Color> PAPERS_KEPT =
            List.of(new Color(250, 226, 214), new Color(214, 220, 232), new Color(238, 238, 238));

    private static final List<Color> HEADERS_KEPT =
            List.of(new Color(150, 96, 20), new Color(20, 20, 24), new Color(190, 190, 70));

    /** A card or, one time in four, a page. */
    static CardLook drawn(Draws d) {
        CardLook look = random(d.random());
        CardLook card = new CardLook(
                look.format,
                look.title,
                d.of(List.of(look.paper), PAPERS_KEPT),
                d.of(List.of(look.header), HEADERS_KEPT),
                look.skin,
                look.portraitLeft,
                look.lines,
                look.zone);
        return look.format == Format.ID_3 ? card.asPage() : card;
    }

    static CardLook random(Random r) {
        String born = 10 + r.nextInt(18) + " " + pick(MONTHS, r) + " " + (1950 + r.nextInt(55));
        CardLook look = of(pick(GIVEN, r), pick(FAMILY, r), born, r);
        return r.nextInt(4) > 0 ? look : look.asPage();
    }

    /** An ID-1 card of that invented person; its colours by the source of randomness. */
    static CardLook of(String given, String family, String born, Random r) {
        Skin skin = new Skin(pick(FACES, r), pick(HAIR, r), new Color(r.nextInt(200), r.nextInt(200), r.nextInt(200)));
        return new CardLook(
                Format.ID_1,
                TITLES[r.nextInt(3)],
                pick(PAPERS, r),
                pick(HEADERS, r),
                skin,
                r.nextInt(5) > 0,
                List.of(family, given, born, "NO " + (100000 + r.nextInt(900000))),
                List.of());
    }

    CardLook asPage() {
        String padded =
                ("P<UTO" + lines.get(0).replace('-', '<') + "<<" + lines.get(1) + "<".repeat(44)).substring(0, 44);
        String numbers = ("X" + lines.get(3).substring(3) + "<".repeat(44)).substring(0, 44);
        return new CardLook(Format.ID_3, TITLES[3], paper, paper, skin, true, lines, List.of(padded, numbers));
    }

    private static <T> T pick(T[] from, Random r) {
        return from[r.nextInt(from.length)];
    }
}
