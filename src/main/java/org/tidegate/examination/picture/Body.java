package org.tidegate.examination.picture;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.tidegate.examination.picture.DyeBars.Bar;
import org.tidegate.examination.picture.Regions.Region;
import org.tidegate.rules.Protocol;

/**
 * What makes an elongated flat thing a cassette: one result window in its middle line, a sample well beside it. Fractions of length and
 * breadth; the sample end is at 0 where the well was seen.
 *
 * @param window outline of the window's rim
 * @param windowQuality 0–1
 * @param well how surely a sample well was seen, 0–1
 * @param byLines whether the window and the sample end were told by the lines of dye
 * @param plain share of the body that shows its own colour: print, lines and a window are a small part of a cassette, not of a page
 * @param own the same with what lies in a shadow; as {@code plain} where the window was not told by lines
 */
record Body(Quad outline, Box window, double windowQuality, double well, boolean byLines, double plain, double own) {

    /** Part of an outline as fractions of its length and breadth. */
    record Box(double fromU, double fromV, double toU, double toV) {

        Box turned() {
            return new Box(1 - toU, 1 - toV, 1 - fromU, 1 - fromV);
        }

        double centreU() {
            return (fromU + toU) / 2;
        }
    }

    static final double PLAIN = 0.25;

    /** Darkest a membrane may be against the body, and so told from print and holes. */
    private static final double MEMBRANE_LIGHT = 0.72;

    /** Share of a rim that must be seen on each side, and from which on nothing is missing. */
    private static final double RIM_FROM = 0.5;

    private static final double RIM_FULL = 0.75;

    /** Plain share below which something is a printed page: nothing is looked for twice there. */
    static final double PAGE = 0.86;

    /** Plain share below which something is none, whatever lies on it. */
    static final double CLUTTERED = 0.6;

    /** Share of the picture's longer side from which something is looked at twice: a row of blurred print is smaller. */
    private static final double LARGE = 0.18;

    /** What a well counts that was only told by one side being darker than the other. */
    private static final double GUESSED = 0.4;

    /** From here on a rim tells best where the window ends: print and handwriting beside it run into what else is seen of it. */
    private static final double TRUSTED = 0.6;

    /** Less than this tells no end from the other. */
    private static final double UNDECIDED = 0.3;

    /** Where a window lies at least, shares of the length: wells lie beside it. */
    private static final double[] WINDOW = {0.36, 0.64};

    /** Alikeness of the channels of a body's own colour, and how dark a shadow on it may be. */
    private static final double OWN_COLOUR = 0.16;

    private static final double SHADED = 0.3;

    private static final double[] LEANS = {-0.2, -0.1, 0.1, 0.2};

    /** Half of a rim's usual thickness in pixels: a rim is found by its middle. */
    private static final int RIM = 2;

    /** Something seen on the body, in pixels of the upright surface. */
    private record Seen(int left, int top, int right, int bottom, double quality) {

        static Seen of(Region r, double quality) {
            return new Seen(r.left(), r.top(), r.right(), r.bottom(), quality);
        }

        int width() {
            return right - left + 1;
        }

        int height() {
            return bottom - top + 1;
        }
    }

    /** @param inside what is seen within the outline */
    static Optional<Body> read(Quad quad, BodyInside inside, Pixels image) {
        Surface surface = inside.surface();
        Optional<Seen> window =
                better(Optional.empty(), inside.features().stream().map(r -> Seen.of(r, windowQuality(r, surface))));
        Optional<Seen> regions = window;
        double plain = surface.plainShare(PLAIN);
        boolean again = plain > CLUTTERED && quad.length() > LARGE * Math.max(image.width(), image.height());
        if (again) {
            Optional<Seen> rim =
                    byRim(surface, regions.filter(r -> r.quality() > TRUSTED).isPresent());
            window = rim.filter(r -> r.quality() > TRUSTED).or(() -> better(regions, rim.stream()));
        }
        return window.map(w -> body(quad, inside, again, w, plain));
    }

    /**
     * The body as the kit's window and the lines on it tell it.
     *
     * @param inside what is seen within the outline
     */
    static Optional<Body> byLines(Quad quad, BodyInside inside, Protocol.CassetteShape shape) {
        Surface surface = inside.surface();
        List<Bar> bars = DyeBars.on(surface);
        if (bars.isEmpty()) {
            return Optional.empty();
        }
        double wellAt = inside.wellAt((int) (WINDOW[0] * surface.width()), (int) (WINDOW[1] * surface.width()));
        double plain = surface.plainShare(PLAIN);
        double own = own(surface);
        return KitWindow.around(bars, shape, wellAt)
                .map(k -> new Body(
                        k.turned() ? quad.turned() : quad,
                        k.box(),
                        k.quality(),
                        Math.max(0, k.turned() ? -wellAt : wellAt),
                        true,
                        plain,
                        own));
    }

    /** Share of a surface that shows its own colour, whatever shadows fall on it. */
    static double own(Surface surface) {
        return Math.max(surface.plainShare(PLAIN), surface.ownColourShare(OWN_COLOUR, SHADED));
    }

    /** The same with its other end taken for the sample's. */
    Body turned() {
        return new Body(outline.turned(), window.turned(), windowQuality, well, byLines, plain, own);
    }

    private static Optional<Seen> better(Optional<Seen> best, Stream<Seen> more) {
        return Stream.concat(best.stream(), more.filter(s -> s.quality() > 0.2))
                .max(Comparator.comparingDouble(Seen::quality));
    }

    private static Body body(Quad quad, BodyInside inside, boolean again, Seen window, double plain) {
        Surface surface = inside.surface();
        Box box = new Box(
                (double) window.left() / surface.width(),
                (double) window.top() / surface.height(),
                (window.right() + 1.0) / surface.width(),
                (window.bottom() + 1.0) / surface.height());
        double at = inside.wellAt(window.left(), window.right());
        int side = Math.abs(at) > UNDECIDED ? (int) -Math.signum(at) : again ? darkerSide(surface, window) : 0;
        double sure = Math.abs(at) > UNDECIDED ? Math.abs(at) : GUESSED * Math.abs(side);
        return side > 0
                ? new Body(quad.turned(), box.turned(), window.quality(), sure, false, plain, plain)
                : new Body(quad, box, window.quality(), sure, false, plain, plain);
    }

    private static int darkerSide(Surface surface, Seen window) {
        return WellSearch.side(surface, window.left(), window.right()).orElse(0);
    }

    /** @param askew also look for one that leans, because a window must be there */
    private static Optional<Seen> byRim(Surface s, boolean askew) {
        WindowRim rims = new WindowRim(s);
        Optional<Seen> straight = rims.upright().map(f -> seen(f, s));
        if (!askew || straight.map(Seen::quality).orElse(0.0) > TRUSTED) {
            return straight;
        }
        return DoubleStream.of(LEANS)
                .mapToObj(rims::leaning)
                .flatMap(Optional::stream)
                .map(f -> seen(f, s))
                .max(Comparator.comparingDouble(Seen::quality));
    }

    private static Seen seen(WindowRim.Found f, Surface s) {
        Seen all = new Seen(f.left() - RIM, f.top() - RIM, f.right() + RIM, f.bottom() + RIM, 0);
        double quality = windowShape(all, s) * within(f.seen(), RIM_FROM, RIM_FULL, 2, 3);
        return new Seen(all.left(), all.top(), all.right(), all.bottom(), quality);
    }

    private static double windowQuality(Region r, Surface s) {
        return windowShape(Seen.of(r, 0), s) * within(r.fill(), 0.8, 0.92, 2, 3);
    }

    private static double windowShape(Seen r, Surface s) {
        double length = (double) r.width() / s.width();
        double breadth = (double) r.height() / s.height();
        double aspect = (double) r.width() / r.height();
        double offMiddle = Math.abs((r.top() + r.bottom() + 1) / 2.0 / s.height() - 0.5);
        double offCentre = Math.abs((r.left() + r.right() + 1) / 2.0 / s.width() - 0.5);
        return within(length, 0.12, 0.18, 0.42, 0.58)
                * within(breadth, 0.14, 0.2, 0.6, 0.8)
                * within(aspect, 1.1, 1.5, 4.5, 8)
                * within(offMiddle, -1, -0.5, 0.08, 0.2)
                * within(offCentre, -1, -0.5, 0.2, 0.32)
                * within(membraneLight(r, s), MEMBRANE_LIGHT, MEMBRANE_LIGHT + 0.1, 2, 3);
    }

    /** Light part of the window's middle against the body's own brightness: its upper quartile, for lines are dark. */
    private static double membraneLight(Seen r, Surface s) {
        int n = r.width() * 6 / 10;
        double[] share = new double[Math.max(1, n)];
        int middle = (r.top() + r.bottom()) / 2;
        for (int i = 0; i < share.length; i++) {
            int x = r.left() + r.width() * 2 / 10 + i;
            share[i] = s.green(x, middle) / Math.max(1, s.lightAt(x, middle));
        }
        Arrays.sort(share);
        return share[share.length * 3 / 4];
    }

    /** 1 between the inner limits, 0 outside the outer ones, straight in between. */
    static double within(double value, double outerLow, double low, double high, double outerHigh) {
        double rise = (value - outerLow) / (low - outerLow);
        double fall = (outerHigh - value) / (outerHigh - high);
        return Math.max(0, Math.min(1, Math.min(rise, fall)));
    }
}
