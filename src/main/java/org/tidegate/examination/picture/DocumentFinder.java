package org.tidegate.examination.picture;

import java.awt.image.BufferedImage;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

    /** Longer side of the picture in which portraits are looked for. */
    private static final int ROUGH_SIDE = 480;

    private static final int MOST_CANDIDATES = 40;
    private static final double MIN_SHARE = 0.02;

    /** Nothing better is looked for. */
    private static final double CERTAIN = 0.99;

    private static final double GUESSED = 0.86;
    /** By how much more of an outline's edges must be seen, and how good a card it must be, to be told instead. */
    private static final double CLEARER = 0.03;

    private static final double AS_GOOD = 0.6;

    /** What is known of a card before anything on it is looked at. */
    private record Outline(QuadSearch.Found card, CardSigns signs) {}

    /** Something that may be an identity document. */
    private record Card(double confidence, double edges, List<Corner> box, List<Corner> portrait) {

        static final Card NONE = new Card(0, 0, List.of(), List.of());

        static Card of(double confidence, CardSigns signs, QuadSearch.Found card) {
            return new Card(confidence, signs.edges(), card.quad().corners(), signs.block());
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
        CardSigns.View view = view(image);
        List<Outline> outlines = cards(quads, cassettes, view).stream()
                .map(card -> new Outline(card, CardSigns.outline(card, view)))
                .sorted(Comparator.comparingDouble((Outline o) -> -o.signs.likelihood()))
                .toList();
        Card best = Card.NONE;
        for (Outline outline : outlines) {
            double least = Math.max(best.confidence, rules.documentAt());
            if (best.confidence >= CERTAIN || outline.signs.likelihood() <= least) {
                break;
            }
            best = better(best, outline, view, least);
        }
        boolean present = best.confidence >= rules.documentAt();
        best = present ? framed(best, outlines, view) : best;
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

    static CardSigns.View view(Pixels image) {
        return new CardSigns.View(image, image.shrunkTo(ROUGH_SIDE), image.shrunkTo(QuadSearch.SIDE));
    }

    /** Everything of a card's proportions that is not about a cassette. */
    static List<QuadSearch.Found> cards(
            List<QuadSearch.Found> quads, List<CassetteFinding> cassettes, CardSigns.View view) {
        Pixels image = view.image();
        double scale = image.scaleOver(view.small());
        Stream<QuadSearch.Found> fromInside =
                PortraitSearch.in(quads, view.small(), scale).stream().map(q -> new QuadSearch.Found(q, GUESSED, 1));
        return Stream.concat(quads.stream(), fromInside)
                .filter(f -> isCardShaped(f.quad()) && !holdsCassette(f.quad(), cassettes))
                .filter(f -> f.quad().area() > MIN_SHARE * image.width() * image.height())
                .limit(MOST_CANDIDATES)
                .toList();
    }

    /**
     * With the outline whose edges are seen best of those that hold the portrait: print and the stripes of a table make outlines about it
     * that are as good a card.
     */
    private static Card framed(Card best, List<Outline> outlines, CardSigns.View view) {
        if (best.portrait.isEmpty()) {
            return best;
        }
        Corner middle = Cropping.outline(best.portrait).centre();
        Card framed = best;
        for (Outline outline : outlines) {
            QuadSearch.Found card = outline.card;
            if (card.quad().contains(middle) && outline.signs.edges() > framed.edges + CLEARER) {
                CardSigns signs = outline.signs.seen(card, view).read(card, view);
                framed =
                        signs.likelihood() > AS_GOOD * best.confidence ? Card.of(best.confidence, signs, card) : framed;
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

    /** What can be no better one, whatever may be printed on it, is not read: print is dear to look for. */
    private static Card better(Card best, Outline outline, CardSigns.View view, double least) {
        QuadSearch.Found card = outline.card;
        CardSigns seen = outline.signs.seen(card, view);
        if (seen.likelihood() <= least) {
            return best;
        }
        CardSigns signs = seen.read(card, view);
        return signs.likelihood() > best.confidence ? Card.of(signs.likelihood(), signs, card) : best;
    }
}
