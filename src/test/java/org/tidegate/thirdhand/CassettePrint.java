package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;

/** What is printed and written on a cassette. */
final class CassettePrint {

    /** Where the letters C and T stand. */
    private enum Letters {
        ABOVE,
        BELOW,
        BOLD_ABOVE,
        ONE_BEFORE_WINDOW
    }

    private enum Decoration {
        CODE,
        MAKE,
        MAKE_AND_LOT,
        LABEL,
        WRITING,
        BAND,
        NONE
    }

    private final Draws draws;
    private final CassetteForm form;
    private final Strip strip;
    private final Plastic plastic;
    private final Letters letters;
    private final Decoration decoration;
    private final boolean engraved;
    private final boolean upwards;
    private final String make;
    private final Color ink;
    private final int quarters;

    CassettePrint(Draws draws, CassetteForm form, Strip strip, Plastic plastic) {
        this.draws = draws;
        this.form = form;
        this.strip = strip;
        this.plastic = plastic;
        letters = draws.oneOf(Letters.values());
        decoration = draws.oneOf(Decoration.values());
        engraved = draws.chance(0.3);
        upwards = draws.coin();
        make = Words.name(draws, 2) + draws.oneOf("", " Ag", " IgG", "-25", " Check", " 1T");
        ink = draws.oneOf(
                new Color(30, 30, 35),
                new Color(40, 60, 130),
                new Color(90, 90, 95),
                new Color(150, 40, 50),
                new Color(20, 110, 120));
        quarters = draws.below(4);
    }

    void paint(Graphics2D g) {
        if (form.midstream()) {
            cap(g);
        }
        Color colour = engraved ? Inks.engraved(plastic.colour()) : ink;
        g.setColor(colour);
        letters(g);
        switch (decoration) {
            case CODE -> code(g);
            case MAKE, MAKE_AND_LOT -> make(g);
            case LABEL -> label(g);
            case WRITING -> writing(g);
            case BAND -> band(g);
            case NONE -> {}
        }
        if (form.midstream()) {
            g.setColor(colour);
            Lettering.PLAIN.write(g, "→ " + make, 3, form.length * 0.12, form.width * 0.1);
        }
    }

    private void cap(Graphics2D g) {
        g.setColor(Inks.hsv(form.place, 0.45, 0.85));
        if (form.place > 0.4) {
            g.fill(new Rectangle2D.Double(-form.length / 2, -form.width, form.length * 0.13, 2 * form.width));
        }
    }

    private void letters(Graphics2D g) {
        double size = draws.between(2.3, 3.6);
        if (letters == Letters.ONE_BEFORE_WINDOW) {
            letter(g, "C", form.windowEnd() - size * 0.5, size * 0.35, size);
        } else {
            size = lettersBesideWindow(g, size);
        }
        if (!form.midstream() && !form.duo() && draws.chance(0.65)) {
            letter(g, "S", form.wellAt - form.wellLength - 2.2, size * 0.35, size);
        }
    }

    private double lettersBesideWindow(Graphics2D g, double wished) {
        double rim = form.windowWidth / 2 + form.chamfer;
        double fits = form.width / 2 - rim - 1.2;
        double size = wished > fits ? Math.max(1.3, fits) : wished;
        double v = letters == Letters.BELOW ? rim + form.lip * 1.6 + size * 0.9 : -rim - form.lip * 1.6 - 0.6;
        for (int side = form.duo() ? -1 : 1; side <= 1; side += 2) {
            double lane = side * form.laneOffset();
            letter(g, "C", form.windowAt + strip.controlAt(), lane + v, size);
            letter(g, "T", form.windowAt + strip.testAt(), lane + v, size);
        }
        return size;
    }

    private void letter(Graphics2D g, String letter, double u, double v, double size) {
        AffineTransform before = g.getTransform();
        g.translate(u, v - 0.36 * size);
        g.rotate(quarters * Math.PI / 2);
        Lettering font =
                switch (letters) {
                    case BELOW -> Lettering.NARROW;
                    case BOLD_ABOVE -> Lettering.BOLD;
                    default -> Lettering.PLAIN;
                };
        font.write(g, letter, size, -size * 0.35, size * 0.36);
        g.setTransform(before);
    }

    /** A single C before the window takes the place of other print. */
    private double besideLetter() {
        return letters == Letters.ONE_BEFORE_WINDOW ? 3 : 0;
    }

    private void code(Graphics2D g) {
        double room = form.room();
        if (room > 5) {
            double size = Math.min(room - 0.5, Math.min(form.width - 6, 11));
            double u = form.windowEnd() - 1.2 - size - besideLetter();
            Marks.matrix(g, draws, u, -size / 2, size, 21 + 4 * draws.below(2));
        }
    }

    private void make(Graphics2D g) {
        AffineTransform before = g.getTransform();
        g.translate(form.windowEnd() - 2.5 - besideLetter(), 0);
        g.rotate(upwards ? -Math.PI / 2 : Math.PI / 2);
        makeAcross(g, 2.4, 1.6, -form.width * 0.36);
        if (decoration == Decoration.MAKE_AND_LOT) {
            String lot = "LOT " + Words.digits(draws, 6);
            Lettering.PLAIN.write(g, lot, 1.5, -form.width * 0.36, upwards ? -3 : 3);
        }
        g.setTransform(before);
    }

    private void makeAcross(Graphics2D g, double size, double pitch, double from) {
        Lettering.BOLD.fit(g, make, size, from, 0, Math.min(form.width * 0.72, make.length() * pitch));
    }

    /** Turns to write across the cassette, from its lower long side. */
    private static AffineTransform across(Graphics2D g, double u, double v) {
        AffineTransform before = g.getTransform();
        g.translate(u, v);
        g.rotate(-Math.PI / 2);
        return before;
    }

    private void label(Graphics2D g) {
        double from = -form.length / 2 + 2.5;
        double broad = Math.max(6, form.room());
        g.setColor(new Color(250, 250, 250));
        g.fill(new Rectangle2D.Double(from, -form.width * 0.36, broad, form.width * 0.72));
        g.setColor(new Color(25, 40, 120));
        AffineTransform before = across(g, from + broad * 0.65, form.width * 0.32);
        Marks.scrawl(g, draws, 0, 0, form.width * 0.6, 3, 0.35);
        g.setTransform(before);
    }

    private void writing(Graphics2D g) {
        g.setColor(draws.oneOf(Inks.PEN_BLUE, new Color(20, 20, 20)));
        if (draws.coin()) {
            AffineTransform before = across(g, -form.length / 2 + 9, form.width * 0.36);
            Marks.scrawl(g, draws, 0, 0, form.width * 0.7, 4, 0.5);
            g.setTransform(before);
        } else {
            Marks.scrawl(g, draws, -form.length / 2 + 4, form.width / 2 - 2.2, form.length * 0.35, 3, 0.45);
        }
    }

    private void band(Graphics2D g) {
        g.setColor(Inks.hsv(form.place, draws.between(0.4, 0.85), draws.between(0.5, 0.9)));
        double room = form.room();
        boolean atEnd = draws.chance(0.5);
        double from = atEnd ? -form.length / 2 - 1 : form.windowEnd() - form.lip - Math.min(room, 9) - 0.5;
        double broad = Math.min(Math.max(room, 3), draws.between(4, 9)) + (atEnd ? 1 : 0);
        g.fill(new Rectangle2D.Double(from, -form.width, broad, 2 * form.width));
        g.setColor(Color.WHITE);
        AffineTransform before = across(g, from + 4.2, form.width * 0.36);
        makeAcross(g, 2.6, 1.7, 0);
        g.setTransform(before);
    }
}
