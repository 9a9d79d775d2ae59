package org.tidegate.otherhand;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.LinearGradientPaint;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** A passport's data page of the size ID-3 (ISO/IEC 7810: 125 x 88 mm), below the facing page or alone. */
final class Passport implements Thing {

    private static final double W = 125;
    private static final double H = 88;

    private final boolean open;
    private final Person person;
    private final Portrait portrait;
    private final Color paper;
    private final Color accent;
    private final Font font;
    private final boolean right;
    private final Draw draw;

    Passport(Draw draw) {
        this.draw = draw;
        open = draw.chance(0.65);
        person = Person.drawn(draw);
        portrait = Portrait.drawn(draw);
        paper = draw.colour(8, 0xe8eadf, 0xeee4dc, 0xdde8ec, 0xece8f0, 0xe6efe2, 0xf0ecd8);
        accent = draw.colour(15, 0x7a2b3c, 0x2b4a7a, 0x2c6b58, 0x8a6a2b, 0x5b3f7a);
        font = draw.oneOf(Lettering.PLAIN, Lettering.BOLD, Lettering.SERIF);
        right = draw.chance(0.15);
    }

    private double top() {
        return open ? H : 0;
    }

    @Override
    public Shape outline() {
        return new RoundRectangle2D.Double(0, 0, W, top() + H, 6, 6);
    }

    @Override
    public Rectangle2D keep() {
        return new Rectangle2D.Double(0, top(), W, H);
    }

    @Override
    public double height() {
        return 2;
    }

    @Override
    public Color wall() {
        return open ? Light.shade(accent, 0.7) : paper;
    }

    @Override
    public double gloss() {
        return 0.35;
    }

    @Override
    public void paint(Graphics2D g, Light light) {
        Graphics2D own = (Graphics2D) g.create();
        own.clip(outline());
        if (open) {
            facing(own);
        }
        own.translate(0, top());
        data(own);
        if (open) {
            own.translate(0, -12);
            own.setPaint(new LinearGradientPaint(0, 0, 0, 24, new float[] {0, 0.5f, 1}, new Color[] {
                Light.faint(Color.BLACK, 0), Light.faint(Color.BLACK, 0.3), Light.faint(Color.BLACK, 0)
            }));
            own.fill(new Rectangle2D.Double(0, 0, W, 24));
        }
        own.dispose();
    }

    private void facing(Graphics2D g) {
        g.setColor(Light.shade(paper, 0.97));
        g.fill(new Rectangle2D.Double(0, 0, W, H));
        Patterns.guilloche(g, W, H, Light.faint(accent, 0.18), draw);
        if (draw.chance(0.5)) {
            Lettering.column(g, 14, 16, W - 28, 46, 4.2, Light.faint(accent, 0.6), draw);
        } else {
            g.setColor(Light.faint(accent, 0.5));
            Lettering.centred(g, "UTOPIA", W / 2, 30, 6, Lettering.SERIF, 0);
            Lettering.centred(g, draw.letters(9, "0123456789"), W / 2, 74, 3.4, Lettering.MACHINE, 0);
        }
    }

    private void data(Graphics2D g) {
        g.setPaint(new LinearGradientPaint(
                0, 0, (float) W, (float) H, new float[] {0, 1}, new Color[] {paper, Light.mix(paper, accent, 0.14)}));
        g.fill(new Rectangle2D.Double(0, 0, W, H));
        Patterns.guilloche(g, W, H - 23, Light.faint(accent, draw.between(0.12, 0.28)), draw);
        double pictureX = right ? W - 40 : 6;
        double textX = right ? 8 : 46;
        portrait.paint(g, pictureX, 16, 34, 43);
        g.setColor(accent);
        Lettering.left(g, "PASSPORT", textX, 9, 3, Lettering.BOLD);
        Lettering.left(g, "UTOPIA", textX + 36, 9, 3, Lettering.BOLD);
        rows(g, textX);
        if (draw.chance(0.5)) {
            Patterns.hologram(g, textX + 56, 48, draw.between(5, 9), draw);
        }
        zone(g);
    }

    private void rows(Graphics2D g, double x) {
        String[][] rows = {
            {"Type / Code", "P   UTO   " + person.number()},
            {"Surname", person.surname()},
            {"Given names", person.given()},
            {"Nationality", "UTOPIAN"},
            {"Date of birth", person.born()},
            {"Sex / Place of birth", person.sex() + "   ZENITH"},
            {"Authority", "PASSPORT OFFICE"}
        };
        for (int i = 0; i < rows.length; i++) {
            g.setColor(Light.mix(accent, Color.GRAY, 0.4));
            Lettering.left(g, rows[i][0], x, 14.5 + 6.9 * i, 1.2, Lettering.PLAIN);
            g.setColor(new Color(0x1c1c22));
            Lettering.left(g, rows[i][1], x, 18.4 + 6.9 * i, 2.4, font);
        }
    }

    private void zone(Graphics2D g) {
        g.setColor(Light.faint(new Color(0xfafaf6), 0.7));
        g.fill(new Rectangle2D.Double(0, H - 23, W, 23));
        g.setColor(new Color(0x161619));
        String[] zone = person.passportZone();
        Lettering.spread(g, zone[0], 6, H - 13.6, W - 13, 2.7);
        Lettering.spread(g, zone[1], 6, H - 6.6, W - 13, 2.7);
    }
}
