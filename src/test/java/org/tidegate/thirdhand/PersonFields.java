package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;

/** What a page says of its holder. */
record PersonFields(Holder holder, SecurityPrint background, Color ink) {

    private static final String[] CAPTIONS = {
        "Name / Nom", "Vornamen / Given", "Nat.", "Born", "Place", "Expiry", "Authority", "Height", "Addr."
    };

    /**
     * Captions with values below them, the third and fourth and the fifth and sixth side by side.
     *
     * @param step from one row to the next, mm
     */
    void column(Graphics2D g, Draws draws, double x, double y, double width, int count, double step) {
        String[] values = values(draws);
        for (int i = 0; i < count; i += paired(i) ? 2 : 1) {
            field(g, i, values[i], x, y + i * step, width, step);
            if (paired(i) && i + 1 < count) {
                field(g, i + 1, values[i + 1], x + width * 0.55, y + i * step, 0, step);
            }
        }
    }

    private static boolean paired(int i) {
        return i == 2 || i == 4;
    }

    private String[] values(Draws draws) {
        return new String[] {
            Words.upper(holder.surname()),
            Words.upper(holder.given()),
            holder.state(),
            Words.day(draws),
            Words.capitals(draws, 3),
            Words.day(draws),
            Words.capitals(draws, 2) + " " + Words.name(draws, 2),
            "1." + (50 + draws.below(45)) + " m",
            Words.name(draws, 3) + " " + draws.below(90)
        };
    }

    private void field(Graphics2D g, int i, String value, double x, double y, double width, double step) {
        g.setColor(background.pale());
        Lettering.PLAIN.write(g, CAPTIONS[i], step * 0.27, x, y);
        g.setColor(ink);
        Lettering font = i < 2 ? Lettering.BOLD : Lettering.PLAIN;
        double size = step * 0.46;
        boolean tooLong = width > 0 && value.length() * step * 0.31 > width;
        if (tooLong) {
            font.fit(g, value, size, x, y + step * 0.5, width);
        } else {
            font.write(g, value, size, x, y + step * 0.5);
        }
    }

    /** The numbered lines of a driving licence, as ISO/IEC 18013-1 numbers them. */
    void licenceLines(Graphics2D g, Draws draws, double x, double y) {
        g.setColor(ink);
        String[] lines = {
            "1. " + Words.upper(holder.surname()),
            "2. " + Words.upper(holder.given()),
            "3. " + Words.day(draws) + " " + Words.capitals(draws, 3),
            "4a. " + Words.day(draws) + "  4c. " + Words.name(draws, 2),
            "4b. " + Words.day(draws),
            "5. " + holder.number(),
            "9. AM/B/L"
        };
        for (int i = 0; i < lines.length; i++) {
            Lettering.PLAIN.write(g, lines[i], 3, x, y + i * 5);
        }
    }
}
