package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** An invented identity document on the table, perhaps in a sleeve: what it is as a sheet. {@link DocumentPage} prints it. */
final class Document implements Thing {

    /** ISO/IEC 7810, ID-1: 2.88 to 3.48 mm. */
    private static final double CORNER = 3.2;

    private static final double SLEEVE_MARGIN = 4;
    private static final double SLEEVE_GLOSS = 0.93;

    private final int seed;
    private final DocumentKind kind;
    private final boolean sleeved;
    private final Hologram hologram;
    private final DocumentPage page;
    private final double bow;
    private final double gloss;

    Document(Draws draws) {
        seed = draws.noiseSeed();
        kind = DocumentKind.drawn(draws);
        boolean mirrored = draws.chance(0.35);
        sleeved = kind.sleevedShare() > 0 && draws.chance(kind.sleevedShare());
        hologram = new Hologram(draws.share(), kind.width, kind.height);
        SecurityPrint background = SecurityPrint.drawn(draws);
        Color ink = draws.oneOf(Inks.NIGHT, new Color(30, 30, 60), new Color(50, 35, 30));
        bow = draws.between(-0.5, 0.5);
        gloss = kind.passport() ? draws.between(0.2, 0.7) : draws.between(0.45, 0.93);
        page = new DocumentPage(
                draws, kind, mirrored, background, new PersonFields(Holder.drawn(draws), background, ink));
    }

    DocumentKind kind() {
        return kind;
    }

    /** Where the zone is, from the document's middle; only meant for a kind that has one. */
    Rectangle2D zone() {
        double top = (kind.passport() ? 68.5 : 34.5) - kind.height / 2 + kind.pageOffset();
        double height = kind.passport() ? 13.5 : 15.5;
        return new Rectangle2D.Double(-kind.width * 0.45, top, kind.width * 0.9, height);
    }

    private double margin() {
        return sleeved ? SLEEVE_MARGIN : 0;
    }

    @Override
    public double halfLength() {
        return kind.width / 2 + margin();
    }

    @Override
    public double halfWidth() {
        return kind.height / 2 + kind.pageOffset() + margin();
    }

    @Override
    public String name() {
        return kind.label + (sleeved ? " in sleeve" : "");
    }

    @Override
    public double height(double u, double v) {
        if (Distances.roundedBox(u, v, halfLength(), halfWidth(), sleeved ? 2 : CORNER) > 0) {
            return Double.NaN;
        }
        double wrinkles = sleeved ? 0.35 * Math.pow(Noise.rough(u * 0.07, v * 0.07, seed, 2), 2) : 0;
        return wrinkles
                + switch (kind) {
                    case OPEN_PASSPORT -> openBook(u, v);
                    case PASSPORT_PAGE -> 1.2 + 0.6 * swell((v + 44) / 88) + warped(u, v);
                    default -> card(u, v);
                };
    }

    /** Two halves that swell beside the fold. */
    private double openBook(double u, double v) {
        double fromFold = Math.abs(v) / kind.height;
        double fold = 1.2 * Math.exp(-fromFold * fromFold / 0.002);
        return 1.2 + swell(fromFold) - fold + warped(u, v);
    }

    private static double swell(double fromFold) {
        return 1.8 * Curves.bump(fromFold - 0.18, 0.16);
    }

    private double warped(double u, double v) {
        return 0.8 * bow * u / kind.width + 0.35 * Noise.rough(u * 0.02, v * 0.03, seed, 2);
    }

    private double card(double u, double v) {
        double end = u / halfLength();
        double bent = 0.8 * (bow * (1 - end * end) + Math.max(0, -bow));
        return 0.78 + bent + 0.1 * Noise.at(u * 0.04, v * 0.04, seed);
    }

    @Override
    public double gloss(double u, double v) {
        if (sleeved) {
            return SLEEVE_GLOSS;
        }
        return kind == DocumentKind.OPEN_PASSPORT && v < 0 ? 0.1 : gloss;
    }

    @Override
    public Rgb finish(double u, double v, Rgb painted) {
        return hologram.over(u, v - kind.pageOffset(), painted);
    }

    @Override
    public void paint(Graphics2D g) {
        if (sleeved) {
            sleeve(g);
        }
        Graphics2D p = (Graphics2D) g.create();
        p.translate(-kind.width / 2, kind.pageOffset() - kind.height / 2);
        p.clip(new RoundRectangle2D.Double(0, 0, kind.width, kind.height, 2 * CORNER, 2 * CORNER));
        page.paint(p);
        p.dispose();
        if (kind == DocumentKind.OPEN_PASSPORT) {
            upperPage(g);
        }
    }

    private void sleeve(Graphics2D g) {
        double u = halfLength();
        double v = halfWidth();
        g.setColor(new Color(235, 240, 245, 60));
        g.fill(new Rectangle2D.Double(-u, -v, 2 * u, 2 * v));
        g.setColor(new Color(255, 255, 255, 110));
        g.setStroke(Marks.line(0.6));
        g.draw(new RoundRectangle2D.Double(-u + 1, -v + 1, 2 * u - 2, 2 * v - 2, 3, 3));
    }

    private void upperPage(Graphics2D g) {
        Graphics2D p = (Graphics2D) g.create();
        p.translate(-kind.width / 2, -kind.height);
        p.clip(new Rectangle2D.Double(0, 0, kind.width, kind.height));
        page.paintOpposite(p);
        p.dispose();
        g.setPaint(Gradients.upright(-6, 6, new Color(0, 0, 0, 0), new Color(0, 0, 0, 110), new Color(0, 0, 0, 0)));
        g.fill(new Rectangle2D.Double(-kind.width / 2, -6, kind.width, 12));
    }
}
