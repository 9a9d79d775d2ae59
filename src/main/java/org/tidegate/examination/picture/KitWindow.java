package org.tidegate.examination.picture;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.examination.picture.DyeBars.Bar;
import org.tidegate.rules.Protocol.CassetteShape;
import org.tidegate.rules.Protocol.LinePlace;

/**
 * The result window as the lines of dye on a body tell it: they lie where the kit says, and a window lies around them. Needs no rim, and tells the
 * sample end by where the control line lies.
 *
 * @param box with the sample end at 0 once the body is turned, where it is to be
 * @param turned whether the sample end is the outline's other one
 * @param quality 0–1
 */
record KitWindow(Body.Box box, boolean turned, double quality) {

    /** How far the lines may be off the kit's places together, as a share of the length, since no outline is exact: with nothing
     * said, with a well that tells the sample end, and of a lonely test line. A test line taken for a turned control line would be off by more. */
    private static final double OFF = 0.05;

    private static final double OFF_WITH_WELL = 0.075;

    private static final double OFF_ALONE = 0.025;

    /** The same of two lines that lie from each other as the kit's do, with a well: a hand may hide an end of the body. */
    private static final double OFF_TOGETHER = 0.12;

    /** A test line without a control line is believed only where a well plainly tells the sample end. */
    private static final double PLAIN = 0.8;

    /** How far one line may be off another's place. */
    private static final double OFF_EACH_OTHER = 0.022;

    /** Weaker than this share of the strongest bar, a bar that no line explains is no contradiction. */
    private static final double CONTRADICTS = 0.65;

    /** The rim may have a colour, but is less of a dye than a line. */
    private static final double LESS_PURE = 0.8;

    private static final double CONTRADICTED = 0.6;

    /** A strip without a control line is rarer than an outline that is not exact. */
    private static final double WITHOUT_CONTROL = 0.6;

    private static final double CONTROL_SEEN = 1;
    private static final double ALONE = 0.3;
    private static final double FOR_WELL = 0.6;
    private static final double FOR_PLACE = 6;
    private static final double FOR_CONTRADICTION = 0.8;

    private static final double FOR_UNLIKE = 0.25;

    /** Height against a test line's from which on a control line looks like a rim, and is surely one. */
    private static final double[] TALLER = {1.1, 1.4};

    /** So little unlike are two lines of one strip at most. */
    private static final double TOGETHER = 0.4;

    private record Guess(KitWindow window, double worth) {}

    /**
     * @param wellAt how surely a well was seen at the outline's first end (1) or at its last (−1), 0 for neither
     * @return the best; empty where no line lies where one may
     */
    static Optional<KitWindow> around(List<Bar> bars, CassetteShape shape, double wellAt) {
        return Stream.of(false, true)
                .flatMap(turned ->
                        guesses(turned ? bars.stream().map(Bar::turned).toList() : bars, shape, turned, wellAt))
                .max(Comparator.comparingDouble(Guess::worth))
                .map(Guess::window);
    }

    private static Stream<Guess> guesses(List<Bar> bars, CassetteShape shape, boolean turned, double wellAt) {
        return shape.lines().stream()
                .flatMap(line -> bars.stream().flatMap(bar -> guess(bar, line, bars, shape, turned, wellAt).stream()));
    }

    /** That this bar is that line. */
    private static Optional<Guess> guess(
            Bar bar, LinePlace line, List<Bar> bars, CassetteShape shape, boolean turned, double wellAt) {
        boolean control = line.isControl();
        double shift = bar.at() - place(line, shape);
        double sampleEnd = turned ? -wellAt : wellAt;
        boolean welled = sampleEnd >= PLAIN;
        double unlike = control ? unlike(bar, shift, bars, shape) : 0;
        boolean together = control && welled && unlike < TOGETHER && hasFellow(bar, shift, bars, shape);
        double room = together ? OFF_TOGETHER : !control ? OFF_ALONE : welled ? OFF_WITH_WELL : OFF;
        if (Math.abs(shift) > room || !control && !welled) {
            return Optional.empty();
        }
        double strongest = bars.stream().mapToDouble(Bar::strength).max().orElse(0);
        boolean contradicted = bars.stream()
                .filter(b -> b.strength() > CONTRADICTS * strongest)
                .anyMatch(b -> !isLine(b.at() - shift, shape)
                        && !(b.strength() <= bar.strength()
                                && b.purity() < LESS_PURE * bar.purity()
                                && isEnd(b.at() - shift, shape)));
        double worth = (control ? CONTROL_SEEN : ALONE)
                - FOR_PLACE * Math.abs(shift)
                + FOR_WELL * sampleEnd
                - FOR_UNLIKE * unlike
                - (contradicted ? FOR_CONTRADICTION : 0);
        return Optional.of(new Guess(window(bar, shift, shape, turned, control, contradicted), worth));
    }

    /** How little the bar is like the others that would be lines beside it, if it were the control line: the rim of a window is taller than its lines, and weaker. */
    private static double unlike(Bar control, double shift, List<Bar> bars, CassetteShape shape) {
        return bars.stream()
                .filter(b -> !b.equals(control) && isLine(b.at() - shift, shape))
                .mapToDouble(b -> Body.within(control.height() / b.height(), TALLER[0], TALLER[1], 10, 20)
                        + Math.max(0, 1 - control.strength() / b.strength()))
                .max()
                .orElse(0);
    }

    private static boolean hasFellow(Bar control, double shift, List<Bar> bars, CassetteShape shape) {
        return bars.stream().anyMatch(b -> !b.equals(control) && isLine(b.at() - shift, shape));
    }

    private static boolean isLine(double at, CassetteShape shape) {
        return shape.lines().stream().anyMatch(l -> Math.abs(place(l, shape) - at) < OFF_EACH_OTHER);
    }

    private static boolean isEnd(double at, CassetteShape shape) {
        return Math.min(Math.abs(shape.windowFrom() - at), Math.abs(shape.windowTo() - at)) < OFF_EACH_OTHER;
    }

    private static KitWindow window(
            Bar bar, double shift, CassetteShape shape, boolean turned, boolean control, boolean contradicted) {
        double middle = (bar.fromV() + bar.toV()) / 2;
        double height = bar.height();
        double quality = Body.within(bar.strength(), 0.015, 0.05, 2, 3)
                * Body.within(height / shape.windowWidth(), 0.4, 0.75, 1.2, 1.6)
                * Body.within(Math.abs(middle - 0.5), -1, -0.5, 0.05, 0.2)
                * Body.within(Math.abs(shift), -1, -0.5, 0.025, 0.13)
                * (contradicted ? CONTRADICTED : 1)
                * (control ? 1 : WITHOUT_CONTROL);
        return new KitWindow(
                new Body.Box(
                        shape.windowFrom() + shift, middle - height / 2, shape.windowTo() + shift, middle + height / 2),
                turned,
                quality);
    }

    private static double place(LinePlace line, CassetteShape shape) {
        return shape.windowFrom() + line.at() * (shape.windowTo() - shape.windowFrom());
    }
}
