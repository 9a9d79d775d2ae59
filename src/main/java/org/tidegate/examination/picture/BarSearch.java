package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.examination.picture.Regions.Region;
import org.tidegate.finding.PictureFinding.Corner;
import org.tidegate.rules.Protocol.CassetteShape;
import org.tidegate.rules.Protocol.LinePlace;

/**
 * Finds cassettes by their control line: a short straight bar of dye tells where the body around it must reach, also where the body has the colour of
 * what it lies on, or lies half on a page. As {@link RingSearch} does by windows and wells.
 */
final class BarSearch {

    private static final float[] DYED = {0.035f, 0.08f};

    /** Half of a line's thickness at most, as a share of the picture's longer side. */
    private static final double REACH = 0.009;

    /** Lengths of a line, as shares of the picture's longer side, and how thick it is at most against that. */
    private static final double SHORTEST = 0.018;

    private static final double LONGEST = 0.3;
    private static final double THICKEST = 0.36;
    private static final int MIN_AREA = 10;
    private static final int MOST = 16;

    /** Share of its weakest side along which a guessed outline must be seen. */
    private static final double SEEN = 0.6;

    private final Pixels image;
    private final List<CassetteShape> shapes;

    /** Two ends of a bar's middle line. */
    private record Stroke(Corner from, Corner to) {

        double length() {
            return Quad.distance(from, to);
        }

        Corner middle() {
            return new Corner((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
        }
    }

    private BarSearch(Pixels image, List<CassetteShape> shapes) {
        this.image = image;
        this.shapes = shapes;
    }

    /**
     * @param image about 800 pixels on its longer side
     * @param shapes the kits that may lie there
     * @return outlines as they may be, refined to what is seen; in pixels of that picture
     */
    static List<Quad> in(Pixels image, List<CassetteShape> shapes) {
        return new BarSearch(image, shapes).find();
    }

    private List<Quad> find() {
        float[] dye = dye();
        List<Stroke> strokes = new ArrayList<>();
        for (float dyed : DYED) {
            boolean[] mask = new boolean[dye.length];
            for (int i = 0; i < mask.length; i++) {
                mask[i] = dye[i] > dyed;
            }
            Regions.of(mask, image.width(), image.height(), MIN_AREA).stream()
                    .flatMap(r -> stroke(r).stream())
                    .filter(s ->
                            strokes.stream().noneMatch(o -> Quad.distance(o.middle(), s.middle()) < s.length() / 4))
                    .forEach(strokes::add);
        }
        return strokes.stream()
                .sorted(Comparator.comparingDouble((Stroke s) -> strength(s, dye))
                        .reversed())
                .limit(MOST)
                .flatMap(this::outlines)
                .filter(q -> SideFit.seen(q, image) > SEEN)
                .toList();
    }

    /** Weakest dye along the inner part of a stroke: a line goes on, print does not. */
    private double strength(Stroke stroke, float[] dye) {
        double least = 1;
        for (double t = 0.2; t < 0.85; t += 0.1) {
            int x = (int) Math.round(
                    stroke.from().x() + t * (stroke.to().x() - stroke.from().x()));
            int y = (int) Math.round(
                    stroke.from().y() + t * (stroke.to().y() - stroke.from().y()));
            least = Math.min(
                    least,
                    dye[
                            Math.min(image.height() - 1, Math.max(0, y)) * image.width()
                                    + Math.min(image.width() - 1, Math.max(0, x))]);
        }
        return least;
    }

    /** By how much more each place loses of one colour than of another to something thin, 0–1. */
    private float[] dye() {
        int w = image.width();
        int h = image.height();
        int reach = Math.max(2, (int) Math.round(REACH * Math.max(w, h)));
        float[] most = new float[w * h];
        float[] least = new float[w * h];
        for (int c = 0; c < 3; c++) {
            float[] dark = ThinDark.of(EdgeMap.smooth(image.channel(c), w, h), w, h, reach);
            for (int i = 0; i < dark.length; i++) {
                most[i] = Math.max(most[i], dark[i]);
                least[i] = c == 0 ? dark[i] : Math.min(least[i], dark[i]);
            }
        }
        for (int i = 0; i < most.length; i++) {
            most[i] -= least[i];
        }
        return most;
    }

    /** The middle line of a long straight region, along the side of its smallest box. */
    private Optional<Stroke> stroke(Region region) {
        List<Corner> hull = region.hull();
        double least = Double.MAX_VALUE;
        Optional<Stroke> best = Optional.empty();
        for (int i = 0; i < hull.size(); i++) {
            Corner a = hull.get(i);
            Corner b = hull.get((i + 1) % hull.size());
            double side = Quad.distance(a, b);
            if (side < 1) {
                continue;
            }
            double ux = (b.x() - a.x()) / side;
            double uy = (b.y() - a.y()) / side;
            double[] along = extent(hull, ux, uy);
            double[] across = extent(hull, -uy, ux);
            double length = along[1] - along[0] + 1;
            double thick = across[1] - across[0] + 1;
            if (length * thick < least) {
                least = length * thick;
                double middle = (across[0] + across[1]) / 2;
                Stroke stroke = new Stroke(
                        new Corner(along[0] * ux - middle * uy, along[0] * uy + middle * ux),
                        new Corner(along[1] * ux - middle * uy, along[1] * uy + middle * ux));
                best = thick <= THICKEST * length ? Optional.of(stroke) : Optional.empty();
            }
        }
        double side = Math.max(image.width(), image.height());
        return best.filter(s -> s.length() > SHORTEST * side && s.length() < LONGEST * side);
    }

    private static double[] extent(List<Corner> hull, double ux, double uy) {
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (Corner c : hull) {
            double at = c.x() * ux + c.y() * uy;
            low = Math.min(low, at);
            high = Math.max(high, at);
        }
        return new double[] {low, high};
    }

    private Stream<Quad> outlines(Stroke stroke) {
        return shapes.stream()
                .flatMap(shape -> shape.lines().stream()
                        .filter(LinePlace::isControl)
                        .flatMap(line -> Stream.of(
                                outline(stroke, line, shape),
                                outline(new Stroke(stroke.to(), stroke.from()), line, shape))))
                .map(guess -> SideFit.refine(guess, image));
    }

    /** The body about a line that runs across its window. */
    private static Quad outline(Stroke stroke, LinePlace line, CassetteShape shape) {
        double breadth = stroke.length() / shape.windowWidth();
        double length = breadth * shape.aspect();
        double at = shape.windowFrom() + line.at() * (shape.windowTo() - shape.windowFrom());
        double vx = (stroke.to().x() - stroke.from().x()) / stroke.length();
        double vy = (stroke.to().y() - stroke.from().y()) / stroke.length();
        Corner middle = stroke.middle();
        return new Quad(
                corner(middle, vx, vy, -at * length, -breadth / 2),
                corner(middle, vx, vy, (1 - at) * length, -breadth / 2),
                corner(middle, vx, vy, (1 - at) * length, breadth / 2),
                corner(middle, vx, vy, -at * length, breadth / 2));
    }

    private static Corner corner(Corner middle, double vx, double vy, double along, double across) {
        return new Corner(middle.x() + along * vy + across * vx, middle.y() - along * vx + across * vy);
    }
}
