package org.tidegate.examination.picture;

import java.util.List;
import org.tidegate.examination.picture.Regions.Region;
import org.tidegate.finding.PictureFinding.Corner;

/**
 * What speaks for an outline being an identity document's, each 0–1.
 *
 * @param square how much the outline is a quad
 * @param edges share of its weakest side along which an edge is seen
 * @param portrait how much a block on it has a portrait's shape and variety
 * @param clear how far that block keeps from the outline, in tenths of the card's height
 * @param colourful share of that block's variety that two colours do not explain: a patterned cloth has two
 * @param print how much print lies on it
 * @param text share of the print that stands in rows as long as a machine-readable zone
 * @param size how much of the picture it takes
 * @param block that block in the picture; empty where there is none
 */
record CardSigns(
        double square,
        double edges,
        double portrait,
        double clear,
        double colourful,
        double print,
        double text,
        double size,
        List<Corner> block) {

    /** Length of an upright card on which portraits are looked for, and of one on which print is. */
    private static final int ROUGH_LENGTH = 200;

    private static final int LENGTH = 400;
    private static final double[] STANDS_OUT = {0.12, 0.2, 0.3};

    /** Spread of brightness within a square of a chequered cloth, and from which on it may be hair, face and clothes. */
    private static final double UNIFORM = 0.14;

    private static final double VARIED = 0.3;

    /** Share of the variety that more than two colours make in a portrait. */
    private static final double COLOURFUL = 0.3;

    /** All but the first speak for it. Fitted to drawn pictures ({@code FinderFit 120 250 100}). */
    static final double[] WEIGHTS = {-7.76, 1.82, 2.13, 1.81, 2.62, 0.58, 2.87, 1.27, 1.0};

    private record Block(double likeness, Region region) {}

    /**
     * Where it lies.
     *
     * @param image the whole picture
     * @param rough the same at about 480 pixels
     * @param small the same at {@link QuadSearch#SIDE}
     */
    record View(Pixels image, Pixels rough, Pixels small) {}

    /** The outline alone: whatever may lie within speaks for it as much as it can. */
    static CardSigns outline(QuadSearch.Found card, View view) {
        Quad quad = card.quad();
        Pixels image = view.image;
        return new CardSigns(
                Body.within(card.fit(), 0.86, 0.97, 2, 3),
                SideFit.seen(quad.scaled(1 / image.scaleOver(view.small)), view.small),
                1,
                1,
                1,
                1,
                1,
                Body.within(Math.log(quad.area() / image.width() / image.height()), -4, -2, 2, 3),
                List.of());
    }

    /** With the portrait that is there. */
    CardSigns seen(QuadSearch.Found card, View view) {
        Quad quad = card.quad();
        Pixels image = view.image;
        Surface surface = Surface.of(quad.scaled(1 / image.scaleOver(view.rough)), view.rough, ROUGH_LENGTH, (int)
                Math.round(ROUGH_LENGTH / quad.aspect()));
        Block best = new Block(0, new Region(0, 0, 0, 0, 0, List.of()));
        for (double standsOut : STANDS_OUT) {
            for (Region r : surface.features(standsOut, 0.02, 6)) {
                double likeness = Math.max(framed(r, surface), head(r, surface));
                best = likeness > best.likeness ? new Block(likeness, r) : best;
            }
        }
        Region r = best.region;
        return new CardSigns(
                square,
                edges,
                best.likeness,
                Math.min(1, 10.0 * margin(r, surface) / surface.height()),
                Math.min(1, TwoColours.of(r, surface.pixels()).unexplained() / COLOURFUL),
                print,
                text,
                size,
                best.likeness == 0 ? List.of() : corners(r, surface, quad));
    }

    /** With the print that is there. */
    CardSigns read(QuadSearch.Found card, View view) {
        Quad quad = card.quad();
        double finer = view.image.scaleOver(view.small);
        boolean large = quad.length() > finer * LENGTH;
        Pixels from = large ? view.small : view.image;
        Pixels upright = Homography.toQuad(large ? quad.scaled(1 / finer) : quad)
                .rectify(from, LENGTH, (int) Math.round(LENGTH / quad.aspect()));
        PrintMeter.Print seen = PrintMeter.on(upright);
        double marks = Body.within(seen.marks(), 3, 15, 10000, 20000);
        return new CardSigns(square, edges, portrait, clear, colourful, marks, seen.inLongRows(), size, block);
    }

    /** Probability that it is an identity document. */
    double likelihood() {
        return Logistic.probability(WEIGHTS, terms());
    }

    /** What {@link #WEIGHTS} belong to. */
    double[] terms() {
        return new double[] {1, edges, Math.min(square, edges), portrait, clear, colourful, print, text, size};
    }

    private static List<Corner> corners(Region r, Surface s, Quad card) {
        return card.part(
                        (double) r.left() / s.width(),
                        (double) r.top() / s.height(),
                        (r.right() + 1.0) / s.width(),
                        (r.bottom() + 1.0) / s.height())
                .corners();
    }

    private static int margin(Region r, Surface s) {
        return Math.min(Math.min(r.left(), r.top()), Math.min(s.width() - 1 - r.right(), s.height() - 1 - r.bottom()));
    }

    /** Hair, face and clothes, upright or lying on their side. */
    private static double head(Region r, Surface s) {
        double shape = Body.within((double) r.width() / r.height(), 0.42, 0.55, 1.4, 1.8)
                * Body.within((double) r.height() / s.height(), 0.2, 0.28, 0.8, 0.95)
                * Body.within(share(r, s), 0.025, 0.04, 0.28, 0.4);
        return shape == 0
                ? 0
                : shape * Body.within(solid(r), 0.4, 0.6, 2, 3) * Body.within(s.variety(r), VARIED, 0.5, 2, 3);
    }

    /** A block upright or lying on its side, of a fifth to two thirds of the card's height. */
    private static double framed(Region r, Surface s) {
        double shape = Body.within((double) r.width() / r.height(), 0.5, 0.62, 1.05, 1.4)
                * Body.within((double) r.height() / s.height(), 0.25, 0.36, 0.8, 0.95)
                * Body.within(share(r, s), 0.03, 0.06, 0.26, 0.4);
        double fill = Hull.area(r.hull()) / ((double) r.width() * r.height());
        return shape == 0
                ? 0
                : shape
                        * Body.within(fill, 0.55, 0.75, 2, 3)
                        * Body.within(solid(r), 0.3, 0.5, 2, 3)
                        * Body.within(s.variety(r), UNIFORM, VARIED, 2, 3);
    }

    private static double share(Region r, Surface s) {
        return (double) r.width() * r.height() / (s.width() * s.height());
    }

    private static double solid(Region r) {
        return r.area() / Math.max(1, Hull.area(r.hull()));
    }
}
