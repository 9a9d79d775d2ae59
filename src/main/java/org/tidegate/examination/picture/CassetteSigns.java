package org.tidegate.examination.picture;

import java.util.List;
import java.util.Map;
import org.tidegate.examination.picture.DyeBars.Bar;
import org.tidegate.examination.picture.Regions.Region;
import org.tidegate.finding.PictureFinding.Line;
import org.tidegate.rules.Protocol.CassetteShape;

/**
 * What speaks for an outline being a cassette's, each 0–1.
 *
 * @param square how much the outline is a quad
 * @param edges share of its weakest side along which an edge is seen
 * @param elongated how much it has a cassette's proportions
 * @param own share of it that shows its own colour, whatever shadows fall on it
 * @param window how much something on it has a result window's shape and place
 * @param well how much something beside that is a sample well
 * @param bar how strong a line of dye runs across the window
 * @param kit how much the lines of dye lie where a known kit has them
 * @param busy how many things lie on it
 * @param white how light and colourless it is against the brightest of the picture
 * @param membrane how much of the strip is as light as its membrane
 * @param calm how little else there is along the strip
 * @param line how strong a line in a kit's place is
 * @param size how much of the picture it takes
 */
record CassetteSigns(
        double square,
        double edges,
        double elongated,
        double own,
        double window,
        double well,
        double bar,
        double kit,
        double busy,
        double white,
        double membrane,
        double calm,
        double line,
        double size) {

    /** Fitted to drawn pictures ({@code FinderFit 120 250 100}); how far they hold for a clinic's own kit is not known. */
    static final double[] WEIGHTS = {-13.61, 1.72, 0.82, 0.96, -1.47, 1.1, 1.33, 2.92, 2.59, 1.73, 0.91, 2.2, 0.97, 1.94
    };

    /** Strength of a plain line between the kits' places, and in one. */
    private static final double PLAIN_BAR = 0.08;

    private static final double PLAIN_LINE = 0.2;
    private static final double BUSY = 25;
    private static final double STANDS_OUT = 0.15;

    /** Less a window does not tell where it lies. */
    private static final double PLAIN_WINDOW = 0.3;

    /** Where a window is taken to lie if none was plainly seen, shares of the length. */
    private static final double[] WINDOW = {0.36, 0.64};

    /** A part of the body along its length, pixels. */
    private record Span(int from, int to) {}

    /**
     * Where it lies.
     *
     * @param image the whole picture
     * @param small the same at {@link QuadSearch#SIDE}
     * @param brightest green of the picture's lightest places, 0–255
     * @param kits whose lines are looked for
     */
    record View(Pixels image, Pixels small, int brightest, List<CassetteShape> kits) {}

    static CassetteSigns of(
            QuadSearch.Found found, BodyInside inside, Strip strip, Map<String, Line> lines, View view) {
        Surface surface = inside.surface();
        Quad quad = found.quad();
        double window = 0;
        Span place = new Span((int) (WINDOW[0] * surface.width()), (int) (WINDOW[1] * surface.width()));
        for (Region r : inside.features()) {
            double likeness = window(r, surface);
            if (likeness > window) {
                window = likeness;
                place = likeness > PLAIN_WINDOW ? new Span(r.left(), r.right()) : place;
            }
        }
        List<Bar> bars = DyeBars.on(surface);
        Pixels image = view.image;
        double noise = lines.values().stream().mapToDouble(Line::noise).min().orElse(0);
        double strongest =
                lines.values().stream().mapToDouble(Line::strength).max().orElse(0);
        return new CassetteSigns(
                Body.within(found.fit(), 0.84, 0.97, 2, 3),
                SideFit.seen(quad.scaled(1 / image.scaleOver(view.small)), view.small),
                Body.within(quad.aspect(), 1.7, 2.4, 4.4, 6),
                Body.within(Body.own(surface), 0.4, 0.9, 2, 3),
                window,
                well(inside.features(), place, surface),
                bar(bars, place, surface),
                kit(bars, inside, view.kits),
                Math.min(
                        1,
                        surface.features(STANDS_OUT, BodyInside.MARGIN, BodyInside.LEAST_AREA)
                                        .size()
                                / BUSY),
                Body.within(surface.white() / Math.max(1, view.brightest), 0.2, 0.6, 2, 3),
                Body.within(strip.lightShare(), 0.5, 0.8, 2, 3),
                1 - Body.within(noise, 0.01, 0.06, 2, 3),
                Math.min(1, strongest / PLAIN_LINE),
                Body.within(Math.log(quad.area() / image.width() / image.height()), -6, -3, 2, 3));
    }

    /** Probability that it is a cassette. */
    double likelihood() {
        return Logistic.probability(WEIGHTS, terms());
    }

    /** What {@link #WEIGHTS} belong to: signs that hold for any cassette, and those of which one says little without the other. */
    double[] terms() {
        double outline = Math.min(square, edges);
        return new double[] {
            1,
            well,
            bar,
            kit,
            busy,
            white,
            membrane,
            calm,
            size,
            Math.min(outline, own),
            Math.max(kit, Math.min(window, well)),
            Math.min(window, Math.min(edges, own)),
            Math.max(bar, line) * own,
            elongated * outline
        };
    }

    private static double window(Region r, Surface s) {
        double aspect = (double) r.width() / r.height();
        double offMiddle = Math.abs((r.top() + r.bottom() + 1) / 2.0 / s.height() - 0.5);
        double offCentre = Math.abs((r.left() + r.right() + 1) / 2.0 / s.width() - 0.5);
        return Body.within((double) r.width() / s.width(), 0.09, 0.15, 0.42, 0.58)
                * Body.within((double) r.height() / s.height(), 0.1, 0.16, 0.6, 0.8)
                * Body.within(aspect, 1.1, 1.5, 5.5, 8)
                * Body.within(offMiddle, -1, -0.5, 0.1, 0.22)
                * Body.within(offCentre, -1, -0.5, 0.2, 0.34)
                * Body.within(r.fill(), 0.74, 0.88, 2, 3);
    }

    private static double well(List<Region> features, Span window, Surface s) {
        return features.stream()
                .filter(r -> r.right() < window.from || r.left() > window.to)
                .mapToDouble(r -> WellShape.ANY.likeness(r, s))
                .max()
                .orElse(0);
    }

    private static double bar(List<Bar> bars, Span window, Surface s) {
        return bars.stream()
                .filter(b -> b.at() * s.width() > window.from && b.at() * s.width() < window.to)
                .mapToDouble(b -> Math.min(1, b.strength() / PLAIN_BAR))
                .max()
                .orElse(0);
    }

    private static double kit(List<Bar> bars, BodyInside inside, List<CassetteShape> kits) {
        int width = inside.surface().width();
        double wellAt = inside.wellAt((int) (WINDOW[0] * width), (int) (WINDOW[1] * width));
        return kits.stream()
                .flatMap(kit -> KitWindow.around(bars, kit, wellAt).stream())
                .mapToDouble(KitWindow::quality)
                .max()
                .orElse(0);
    }
}
