package org.tidegate.thirdhand;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/**
 * The print of a document's page, mm from its upper left corner.
 *
 * @param mirrored whether the portrait is on the right
 */
record DocumentPage(Draws draws, DocumentKind kind, boolean mirrored, SecurityPrint background, PersonFields fields) {

    void paint(Graphics2D g) {
        background.paint(g, draws, kind.width, kind.height);
        Color band = Inks.hsv(draws.share(), 0.5, 0.5);
        String title = draws.oneOf("IDENTITY CARD", "PERSONALKARTE", "CARTE D'ID", "CITIZEN CARD");
        String state = "REPUBLIC OF " + Words.capitals(draws, 3);
        switch (kind) {
            case CARD_BACK -> cardBack(g);
            case UPRIGHT_CARD -> uprightCard(g, title, band);
            case LICENCE -> licence(g, band);
            case CARD_FRONT -> cardFront(g, title, state, band);
            case PASSPORT_PAGE, OPEN_PASSPORT -> passport(g, state);
        }
    }

    /** The page above the data page of an open passport. */
    void paintOpposite(Graphics2D g) {
        new OppositePage(draws, background, fields.ink()).paint(g);
    }

    private void cardBack(Graphics2D g) {
        if (draws.chance(0.6)) {
            CardParts.chip(g, draws.between(6, 60), 7);
        }
        fields.column(g, draws, 6, mirrored ? 6 : 18, 38, mirrored ? 4 : 2, 5.6);
        if (draws.chance(0.7)) {
            Marks.bars(g, draws, 48, 6, 32, 6);
        }
        if (draws.chance(0.4)) {
            Portrait.grey(draws).paint(g, 66, 14, 13, 16);
        }
        CardParts.veil(g, new Rectangle2D.Double(0, 32.5, kind.width, 22), 120);
        CardParts.zone(g, Zone.ofCard(draws, fields.holder()), 4.2, 38, 77.4, 5.2);
    }

    private void uprightCard(Graphics2D g, String title, Color band) {
        g.setColor(Inks.faded(band, 0.85));
        if (draws.below(3) == 0) {
            head(g);
        }
        Lettering.BOLD.fit(g, title, 3.6, 4, 6, 44);
        portrait(0.4).paint(g, 13, 12, 28, 35);
        fields.column(g, draws, 5, 51, 44, 5, 6.6);
        if (draws.chance(0.5)) {
            CardParts.chip(g, 36, 70);
        }
    }

    private void head(Graphics2D g) {
        g.fill(new Rectangle2D.Double(0, 0, kind.width, 9));
        g.setColor(Color.WHITE);
    }

    private Portrait portrait(double greyShare) {
        return draws.chance(greyShare) ? Portrait.grey(draws) : Portrait.coloured(draws);
    }

    private void licence(Graphics2D g, Color band) {
        g.setColor(Inks.faded(band, 0.9));
        g.fill(new RoundRectangle2D.Double(3, 3, 11, 8, 2, 2));
        String title = draws.oneOf("DRIVER PERMIT", "PERMIT TO DRIVE", "FAHRERLAUBNIS");
        Lettering.BOLD.write(g, title, 4.2, 17, 8);
        portrait(0.3).paint(g, 4, 17, 23, 30);
        fields.licenceLines(g, draws, 31, 17);
        Marks.scrawl(g, draws, 31, 52, 20, 3.4, 0.25);
        if (draws.chance(0.5)) {
            Portrait.grey(draws).paint(g, 68, 30, 12, 15);
        }
    }

    private void cardFront(Graphics2D g, String title, String state, Color band) {
        g.setColor(Inks.faded(band, 0.85));
        int style = draws.below(3);
        if (style == 0) {
            head(g);
            Lettering.BOLD.write(g, state, 3, 4, 6);
            Lettering.PLAIN.fit(g, title, 2.4, 58, 6, 24);
        } else {
            double x = style == 1 ? 4 : 34;
            Lettering.SERIF_BOLD.write(g, title, 4, x, 7);
            Lettering.PLAIN.write(g, state, 2, x, 10);
        }
        double wide = draws.between(23, 28);
        double at = mirrored ? kind.width - wide - 4.5 : 4.5;
        portrait(0.4).paint(g, at, 13, wide, wide * 1.27);
        double beside = at + wide + 4;
        fields.column(g, draws, mirrored ? 5 : beside, 15, kind.width - wide - 17, 7, 6.6);
        if (draws.chance(0.55)) {
            CardParts.chip(g, mirrored ? 42 : 68, 22);
        }
        g.setColor(fields.ink());
        Lettering.MONO_BOLD.write(g, fields.holder().number(), 3.2, mirrored ? 5 : 58, 51.5);
        Marks.scrawl(g, draws, mirrored ? 34 : beside, 51, 18, 3, 0.22);
        if (draws.chance(0.5)) {
            faintPortrait(g, mirrored ? 46 : 70);
        }
    }

    private void faintPortrait(Graphics2D g, double x) {
        Composite before = g.getComposite();
        g.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, 0.45f));
        Portrait.grey(draws).paint(g, x, 34, 10, 13);
        g.setComposite(before);
    }

    private void passport(Graphics2D g, String state) {
        g.setColor(fields.ink());
        Lettering.BOLD.write(g, "PASSPORT / " + draws.oneOf("PASS", "PASSEPORT", "PASAPO"), 3.4, 6, 8);
        Lettering.PLAIN.write(g, state, 3, 52, 8);
        portrait(0.2).paint(g, mirrored ? 84 : 6, 14, 35, 45);
        double x = mirrored ? 7 : 46;
        g.setColor(fields.ink());
        Holder holder = fields.holder();
        Lettering.MONO.write(g, "P   " + holder.state() + "   " + holder.number(), 3.4, x, 15);
        fields.column(g, draws, x, 20, 66, 6, 8.3);
        Marks.scrawl(g, draws, x + 20, 61, 25, 4, 0.3);
        CardParts.veil(g, new Rectangle2D.Double(0, 64.8, kind.width, 24), draws.chance(0.6) ? 140 : 20);
        CardParts.zone(g, Zone.ofPassport(draws, holder), 6, 73.5, 113, 7.2);
    }
}
