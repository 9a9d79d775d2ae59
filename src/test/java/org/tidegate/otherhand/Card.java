package org.tidegate.otherhand;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.LinearGradientPaint;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** An identity card of the size ID-1 (ISO/IEC 7810: 85.6 x 54 mm, corners of 3.2 mm), in several designs. */
final class Card implements Thing {

    private enum Design {
        LEFT,
        RIGHT,
        LICENCE,
        REVERSE,
        UPRIGHT
    }

    private static final double W = 85.6;
    private static final double H = 54;

    private final Design design;
    private final Person person;
    private final Portrait portrait;
    private final Color paper;
    private final Color second;
    private final Color accent;
    private final Font font;
    private final Draw draw;

    Card(Draw draw) {
        this.draw = draw;
        design = draw.oneOf(
                Design.LEFT,
                Design.LEFT,
                Design.LEFT,
                Design.RIGHT,
                Design.RIGHT,
                Design.LICENCE,
                Design.LICENCE,
                Design.LICENCE,
                Design.UPRIGHT,
                Design.REVERSE);
        person = Person.drawn(draw);
        portrait = Portrait.drawn(draw);
        paper = draw.colour(10, 0xe9eef2, 0xe4ecdf, 0xf1dde0, 0xd7e4ef, 0xf2ead2, 0xe8e8e6, 0xc9d9d4, 0xd9cfe4);
        second = draw.colour(12, 0xc7dcea, 0xf3e3c8, 0xd6e8d4, 0xe6c9cf, 0xf3f3f0, 0xb9cfe0);
        accent = draw.colour(15, 0x1f3f7a, 0x7a1f3a, 0x1f6a52, 0x3a3a44, 0x9a5a14, 0x54307a, 0xb02828);
        font = draw.oneOf(Lettering.PLAIN, Lettering.NARROW, Lettering.BOLD, Lettering.SERIF);
    }

    @Override
    public Shape outline() {
        return design == Design.UPRIGHT
                ? new RoundRectangle2D.Double(0, 0, H, W, 6.4, 6.4)
                : new RoundRectangle2D.Double(0, 0, W, H, 6.4, 6.4);
    }

    @Override
    public double height() {
        return 0.8;
    }

    @Override
    public Color wall() {
        return paper;
    }

    @Override
    public double gloss() {
        return 0.5;
    }

    @Override
    public void paint(Graphics2D g, Light light) {
        Graphics2D own = (Graphics2D) g.create();
        own.clip(outline());
        Rectangle2D all = outline().getBounds2D();
        own.setPaint(new LinearGradientPaint(
                0, 0, (float) all.getWidth(), (float) all.getHeight(), new float[] {0, 1}, new Color[] {paper, second
                }));
        own.fill(all);
        if (draw.chance(0.8)) {
            Patterns.guilloche(own, all.getWidth(), all.getHeight(), Light.faint(accent, draw.between(0.1, 0.3)), draw);
        }
        switch (design) {
            case LEFT -> front(own, 4, 34);
            case RIGHT -> front(own, W - 4 - 24, 5);
            case LICENCE -> licence(own);
            case REVERSE -> reverse(own);
            case UPRIGHT -> upright(own);
        }
        own.dispose();
    }

    private void front(Graphics2D g, double pictureX, double textX) {
        heading(g, W, draw.oneOf("IDENTITY CARD", "NATIONAL IDENTITY CARD", "RESIDENCE PERMIT", "CARTE D'IDENTITÉ"));
        portrait.paint(g, pictureX, 14, 24, draw.between(29, 33));
        fields(g, textX, 16, 5.6);
        if (draw.chance(0.5)) {
            chip(g, textX + draw.between(30, 38) * (textX > 20 ? 1 : 0.75), 19);
        }
        if (draw.chance(0.6)) {
            Patterns.hologram(g, textX + 14, 43, draw.between(4, 7), draw);
        }
    }

    private void heading(Graphics2D g, double wide, String title) {
        boolean band = draw.chance(0.55);
        g.setColor(accent);
        if (band) {
            g.fill(new Rectangle2D.Double(0, 0, wide, 10.5));
            g.setColor(new Color(0xf6f6f2));
        }
        Lettering.left(g, title, wide > 60 ? 14 : 4, 7.2, wide > 60 ? 2.8 : 2.2, Lettering.BOLD);
        if (wide > 60) {
            flag(g, 4, 2.4);
        }
    }

    private void flag(Graphics2D g, double x, double y) {
        for (int i = 0; i < 3; i++) {
            g.setColor(draw.colour(20, 0x2b4f9a, 0xf4f4f4, 0xb8323a, 0xe5c13c, 0x2d8a5a));
            g.fill(new Rectangle2D.Double(x, y + 1.9 * i, 8.4, 1.9));
        }
    }

    private void fields(Graphics2D g, double x, double y, double step) {
        String[][] rows = {
            {"Surname / Nom", person.surname()},
            {"Given names / Prénoms", person.given()},
            {"Date of birth", person.born()},
            {"Document no.", person.number()},
            {"Sex  Nationality", person.sex() + "   UTO"}
        };
        for (int i = 0; i < rows.length; i++) {
            g.setColor(Light.mix(accent, Color.GRAY, 0.4));
            Lettering.left(g, rows[i][0], x, y + step * i, 1.1, Lettering.PLAIN);
            g.setColor(new Color(0x1c1c22));
            Lettering.left(g, rows[i][1], x, y + step * i + 3.2, 2.2, font);
        }
    }

    private void licence(Graphics2D g) {
        heading(g, W, draw.oneOf("DRIVING LICENCE", "PERMISO DE CONDUCCIÓN", "DRIVER LICENSE"));
        portrait.paint(g, 4, 15, 21, 27);
        String[] rows = {
            "1. " + person.surname(),
            "2. " + person.given(),
            "3. " + person.born() + "  UTOPIA",
            "4a. 03.05.2021  4c. OTA",
            "5. " + person.number(),
            "9. AM / B1 / B"
        };
        g.setColor(new Color(0x202026));
        for (int i = 0; i < rows.length; i++) {
            Lettering.left(g, rows[i], 28, 17.5 + 4.6 * i, i < 2 ? 2.2 : 1.7, font);
        }
        Lettering.hand(g, person.given().toLowerCase(java.util.Locale.ROOT), 42, 47, 3, -0.05, draw);
        if (draw.chance(0.6)) {
            Graphics2D ghost = (Graphics2D) g.create();
            ghost.setComposite(java.awt.AlphaComposite.SrcOver.derive(0.4f));
            portrait.paint(ghost, 67, 32, 12, 15);
            ghost.dispose();
        }
    }

    private void reverse(Graphics2D g) {
        String[] zone = person.cardZone();
        g.setColor(Light.faint(Color.WHITE, 0.6));
        g.fill(new Rectangle2D.Double(0, 32, W, 20));
        g.setColor(new Color(0x18181c));
        for (int i = 0; i < 3; i++) {
            Lettering.spread(g, zone[i], 4.5, 37.5 + 5.4 * i, W - 9, 2.4);
        }
        chip(g, 6, 8);
        fields(g, 26, 6, 5.2);
        if (draw.chance(0.6)) {
            portrait.paint(g, 68, 8, 13, 17);
        } else {
            Patterns.bars(g, 58, 5, 22, 7, new Color(0x202024), draw);
        }
    }

    private void upright(Graphics2D g) {
        heading(g, H, draw.oneOf("SKARRA SOUND STAFF", "HARBOUR CREW PASS", "STUDENT CARD"));
        portrait.paint(g, (H - 27) / 2, 15, 27, 34);
        g.setColor(new Color(0x1c1c22));
        Lettering.centred(g, person.given(), H / 2, 55, 3, Lettering.BOLD, 0);
        Lettering.centred(g, person.surname(), H / 2, 60.5, 2.6, font, 0);
        Lettering.centred(g, person.number(), H / 2, 66, 1.8, Lettering.PLAIN, 0);
        Patterns.bars(g, 10, 71, H - 20, 8, new Color(0x202024), draw);
        g.setColor(Light.shade(paper, 0.55));
        g.fill(new RoundRectangle2D.Double(H / 2 - 6, 11.4, 12, 2.4, 2.4, 2.4));
    }

    private void chip(Graphics2D g, double x, double y) {
        g.setColor(new Color(0xd0b468));
        g.fill(new RoundRectangle2D.Double(x, y, 12, 10, 3, 3));
        g.setColor(new Color(0x8d7434));
        g.setStroke(new java.awt.BasicStroke(0.3f));
        g.draw(new Ellipse2D.Double(x + 4, y + 2.5, 4, 5));
        g.draw(new java.awt.geom.Line2D.Double(x, y + 5, x + 4, y + 5));
        g.draw(new java.awt.geom.Line2D.Double(x + 8, y + 5, x + 12, y + 5));
    }
}
