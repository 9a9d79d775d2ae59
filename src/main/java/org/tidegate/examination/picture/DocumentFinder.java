package org.tidegate.examination.picture;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Stream;
import org.tidegate.examination.picture.Regions.Region;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.finding.PictureFinding.Corner;
import org.tidegate.finding.PictureFinding.DocumentFinding;
import org.tidegate.rules.PictureRules;

/**
 * Finds an identity document: a card or page of the proportions of ISO/IEC 7810 (ID-1 85.60 × 53.98 mm, ID-3 125 × 88 mm) that carries a
 * portrait-shaped block and print beside it. Whose portrait it is is never asked.
 */
public final class DocumentFinder {

    private static final double ID_3 = 125.0 / 88;
    private static final double ID_1 = 85.60 / 53.98;

    /** Longer side of the picture in which portraits are looked for, and length of a card there. */
    private static final int ROUGH_SIDE = 480;

    private static final int ROUGH_LENGTH = 200;
    private static final int LENGTH = 400;
    private static final int MOST_CANDIDATES = 40;
    private static final double MIN_SHARE = 0.02;

    /** Spread of brightness within a square of a chequered cloth, and from which on it may be hair, face and clothes. */
    private static final double UNIFORM = 0.14;

    private static final double VARIED = 0.3;

    /** Nothing better is looked for. */
    private static final double CERTAIN = 0.92;

    private static final double GUESSED = 0.86;
    /** By how much more of an outline's edges must be seen, and how good a card it must be, to be told instead. */
    private static final double CLEARER = 0.03;

    private static final double AS_GOOD = 0.6;
    /** Squareness of an outline and share of its weakest side that is seen, below which it says nothing and from which on it is a card's. */
    private static final double[] OUTLINE = {0.94, 0.98};

    private static final double[] EDGES = {0.5, 0.75};
    private static final double[] STANDS_OUT = {0.12, 0.2, 0.3};

    /** Something that may be an identity document. */
    private record Card(double confidence, List<Corner> box, List<Corner> portrait) {

        static final Card NONE = new Card(0, List.of(), List.of());
    }

    /** A block of a card that may be a portrait; its box in shares of the card's length and breadth. */
    private record Portrait(double likeness, Body.Box box) {

        static final Portrait NONE = new Portrait(0, new Body.Box(0, 0, 0, 0));

        static Portrait of(double likeness, Region r, Surface s) {
            return new Portrait(
                    likeness,
                    new Body.Box(
                            (double) r.left() / s.width(),
                            (double) r.top() / s.height(),
                            (r.right() + 1.0) / s.width(),
                            (r.bottom() + 1.0) / s.height()));
        }

        List<Corner> in(Quad card) {
            return card.part(box.fromU(), box.fromV(), box.toU(), box.toV()).corners();
        }
    }

    private DocumentFinder() {}

    /**
     * @param image upright, at most about 1,600 pixels on its longer side
     * @param cassettes already found there: none of them is a document
     */
    public static DocumentFinding find(BufferedImage image, List<CassetteFinding> cassettes, PictureRules rules) {
        Pixels pixels = Pixels.of(image);
        return find(pixels, QuadSearch.in(pixels), cassettes, rules);
    }

    static DocumentFinding find(
            Pixels image, List<QuadSearch.Found> quads, List<CassetteFinding> cassettes, PictureRules rules) {
        Card best = Card.NONE;
        Pixels small = image.shrunkTo(QuadSearch.SIDE);
        Stream<QuadSearch.Found> fromInside = PortraitSearch.in(quads, small, image.scaleOver(small)).stream()
                .map(q -> new QuadSearch.Found(q, GUESSED, 1));
        List<QuadSearch.Found> cards = Stream.concat(quads.stream(), fromInside)
                .filter(f -> isCardShaped(f.quad()) && !holdsCassette(f.quad(), cassettes))
                .filter(f -> f.quad().area() > MIN_SHARE * image.width() * image.height())
                .limit(MOST_CANDIDATES)
                .toList();
        Pixels rough = image.shrunkTo(ROUGH_SIDE);
        for (QuadSearch.Found card : cards) {
            if (best.confidence >= CERTAIN) {
                break;
            }
            Card seen = look(card, image, rough, small);
            best = seen.confidence > best.confidence ? seen : best;
        }
        best = framed(best, cards, image, rough, small);
        boolean present = best.confidence >= rules.documentAt();
        return new DocumentFinding(
                present,
                true,
                best.confidence,
                present ? best.box : List.of(),
                present ? best.portrait : List.of(),
                List.of(),
                List.of(),
                Optional.empty());
    }

    /**
     * With the outline whose edges are seen best of those that hold the portrait: print and the stripes of a table make outlines about it
     * that are as good a card.
     */
    private static Card framed(Card best, List<QuadSearch.Found> cards, Pixels image, Pixels rough, Pixels small) {
        if (best.portrait.isEmpty()) {
            return best;
        }
        double scale = 1 / image.scaleOver(small);
        Corner middle = Cropping.outline(best.portrait).centre();
        Card framed = best;
        double most = SideFit.seen(Cropping.outline(best.box).scaled(scale), small);
        for (QuadSearch.Found card : cards) {
            double seen =
                    card.quad().contains(middle) ? SideFit.seen(card.quad().scaled(scale), small) : 0;
            if (seen > most + CLEARER) {
                Card other = look(card, image, rough, small);
                if (other.confidence > AS_GOOD * best.confidence) {
                    framed = new Card(best.confidence, other.box, other.portrait);
                    most = seen;
                }
            }
        }
        return framed;
    }

    /** Between the two formats, with room for perspective. */
    private static boolean isCardShaped(Quad quad) {
        return quad.aspect() > ID_3 / 1.22 && quad.aspect() < ID_1 * 1.3;
    }

    private static boolean holdsCassette(Quad quad, List<CassetteFinding> cassettes) {
        return cassettes.stream().anyMatch(c -> {
            List<Corner> k = c.box();
            Quad cassette = new Quad(k.get(0), k.get(1), k.get(2), k.get(3));
            return quad.contains(cassette.centre()) || cassette.sharedWith(quad) > 0.3;
        });
    }

    private static Card look(QuadSearch.Found card, Pixels image, Pixels rough, Pixels small) {
        Surface surface = surface(card.quad().scaled(1 / image.scaleOver(rough)), rough);
        Portrait portrait = portrait(surface, DocumentFinder::portrait);
        Card printed = portrait.likeness == 0 ? Card.NONE : printed(card, portrait, image);
        Card outlined = printed.confidence < GUESSED && card.fit() > OUTLINE[0]
                ? outlined(card, surface, image, small)
                : Card.NONE;
        return outlined.confidence > printed.confidence ? outlined : printed;
    }

    /** A card by its own straight edges, with a head and shoulders on it that need no frame of their own. */
    private static Card outlined(QuadSearch.Found card, Surface surface, Pixels image, Pixels small) {
        Portrait head = portrait(surface, DocumentFinder::head);
        if (head.likeness == 0) {
            return Card.NONE;
        }
        double edges = SideFit.seen(card.quad().scaled(1 / image.scaleOver(small)), small);
        double outline =
                Body.within(card.fit(), OUTLINE[0], OUTLINE[1], 2, 3) * Body.within(edges, EDGES[0], EDGES[1], 2, 3);
        return new Card(0.8 * outline * head.likeness, card.quad().corners(), head.in(card.quad()));
    }

    private static Card printed(QuadSearch.Found card, Portrait portrait, Pixels image) {
        int height = (int) Math.round(LENGTH / card.quad().aspect());
        Pixels upright = Homography.toQuad(card.quad()).rectify(image, LENGTH, height);
        double print = Body.within(PrintMeter.marksInRows(upright), 3, 15, 10000, 20000);
        double outline = Body.within(card.fit(), 0.86, 0.96, 2, 3);
        double likeness = portrait.likeness;
        return new Card(
                0.35 * likeness + 0.25 * print + 0.3 * likeness * print + 0.1 * outline,
                card.quad().corners(),
                portrait.in(card.quad()));
    }

    private static Surface surface(Quad card, Pixels image) {
        return Surface.of(card, image, ROUGH_LENGTH, (int) Math.round(ROUGH_LENGTH / card.aspect()));
    }

    private static Portrait portrait(Surface surface, ToDoubleBiFunction<Region, Surface> measure) {
        Portrait best = Portrait.NONE;
        for (double standsOut : STANDS_OUT) {
            for (Region r : surface.features(standsOut, 0.02, 6)) {
                double likeness = measure.applyAsDouble(r, surface);
                best = likeness > best.likeness ? Portrait.of(likeness, r, surface) : best;
            }
        }
        return best;
    }

    /** Hair, face and clothes, upright or lying on their side. */
    private static double head(Region r, Surface s) {
        double upright = (double) r.width() / r.height();
        double high = (double) r.height() / s.height();
        double share = (double) r.width() * r.height() / (s.width() * s.height());
        double solid = (double) r.area() / Math.max(1, Hull.area(r.hull()));
        return Body.within(upright, 0.42, 0.55, 1.4, 1.8)
                * Body.within(high, 0.2, 0.28, 0.8, 0.95)
                * Body.within(share, 0.025, 0.04, 0.28, 0.4)
                * Body.within(solid, 0.4, 0.6, 2, 3)
                * Body.within(s.variety(r), VARIED, 0.5, 2, 3);
    }

    /** A block upright or lying on its side, of a fifth to two thirds of the card's height. */
    private static double portrait(Region r, Surface s) {
        double upright = (double) r.width() / r.height();
        double high = (double) r.height() / s.height();
        double share = (double) r.width() * r.height() / (s.width() * s.height());
        double fill = Hull.area(r.hull()) / ((double) r.width() * r.height());
        double solid = (double) r.area() / Math.max(1, Hull.area(r.hull()));
        if (share < 0.03 || share > 0.4) {
            return 0;
        }
        return Body.within(upright, 0.5, 0.62, 1.05, 1.4)
                * Body.within(high, 0.25, 0.36, 0.8, 0.95)
                * Body.within(share, 0.03, 0.06, 0.26, 0.4)
                * Body.within(fill, 0.55, 0.75, 2, 3)
                * Body.within(solid, 0.3, 0.5, 2, 3)
                * Body.within(s.variety(r), UNIFORM, VARIED, 2, 3);
    }
}
