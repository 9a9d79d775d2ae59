package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds identity documents from the inside: a portrait-shaped block tells where the card around it must reach, also where the card's outline is
 * hidden by a table of its own colour or by something that touches it.
 */
final class PortraitSearch {

    private static final double LEAST = 1.02;
    private static final double MOST_LONG = 1.8;
    private static final double MIN_SHARE = 0.003;
    private static final double MAX_SHARE = 0.12;
    private static final int MOST = 12;

    /**
     * Where the portrait lies on a card, as shares of its length and breadth: between the layouts of ICAO 9303-3 (35 × 45 mm on an ID-3 page) and
     * those of ID-1 cards (common practice, no source).
     */
    private static final double FROM_EDGE = 0.05;

    private static final double WIDTH = 0.28;
    private static final double TOP = 0.21;
    private static final double HEIGHT = 0.56;

    private PortraitSearch() {}

    /**
     * @param quads in pixels of the picture, {@code scale} times finer than the small one
     * @param small the picture at about 800 pixels on its longer side
     * @return outlines as they may be, guessed and refined to what is seen; in pixels of the whole picture
     */
    static List<Quad> in(List<QuadSearch.Found> quads, Pixels small, double scale) {
        List<Quad> cards = new ArrayList<>();
        double all = (double) small.width() * small.height() * scale * scale;
        quads.stream()
                .filter(f -> isPortraitShaped(f.quad()))
                .filter(f -> f.quad().area() > MIN_SHARE * all && f.quad().area() < MAX_SHARE * all)
                .limit(MOST)
                .forEach(f -> around(f.quad().scaled(1 / scale), small, scale, cards));
        return cards;
    }

    private static boolean isPortraitShaped(Quad quad) {
        return quad.aspect() >= LEAST && quad.aspect() <= MOST_LONG;
    }

    /** The four ways in which a card can lie around an upright portrait: it knows neither its left nor its top. */
    private static void around(Quad portrait, Pixels small, double scale, List<Quad> cards) {
        // The portrait's long side is its height: turned so that its height runs across the card.
        Quad upright = new Quad(portrait.b(), portrait.c(), portrait.d(), portrait.a());
        for (Quad p : List.of(upright, upright.turned())) {
            double right = (1 - FROM_EDGE - WIDTH) / WIDTH;
            Quad guess = p.parallelogram()
                    .part(-FROM_EDGE / WIDTH, -TOP / HEIGHT, 1 + right, 1 + (1 - TOP - HEIGHT) / HEIGHT);
            add(guess, scale, cards);
            add(SideFit.refine(guess, small), scale, cards);
        }
    }

    private static void add(Quad card, double scale, List<Quad> cards) {
        cards.add(card.scaled(scale));
    }
}
