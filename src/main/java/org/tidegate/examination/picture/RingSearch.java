package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.examination.picture.Regions.Region;
import org.tidegate.finding.PictureFinding.Corner;
import org.tidegate.rules.Protocol.CassetteShape;

/**
 * Finds cassettes from the inside: the dark rim of a result window and a round well in line with it tell where the body must reach, also where
 * its outline is hidden by a table of its own colour or by something that touches it.
 */
final class RingSearch {

    private static final float[] DARKER = {0.06f, 0.12f};
    private static final double MIN_SHARE = 0.0006;
    private static final double MAX_SHARE = 0.07;
    private static final double MIN_FIT = 0.84;
    private static final int MOST = 16;

    /** Share that a disc fills of its box, π/4, with room for perspective and for a drop's shape. */
    private static final double ROUND_FROM = 0.64;

    private static final double ROUND_TO = 0.93;

    /** Thickness of a rim or of a well's ring, as a share of the longer side. */
    private static final double REACH = 0.016;

    private final Pixels image;
    private final List<CassetteShape> shapes;
    private final List<Quad> found = new ArrayList<>();

    private record Ring(Quad quad, Region region) {}

    private RingSearch(Pixels image, List<CassetteShape> shapes) {
        this.image = image;
        this.shapes = shapes;
    }

    /**
     * @param image about 800 pixels on its longer side
     * @param shapes the kits that may lie there
     * @return outlines as they may be, refined to what is seen; in pixels of that picture
     */
    static List<Quad> in(Pixels image, List<CassetteShape> shapes) {
        RingSearch search = new RingSearch(image, shapes);
        int w = image.width();
        int h = image.height();
        float[] luma = EdgeMap.smooth(image.luma(), w, h);
        float[] dark = ThinDark.of(luma, w, h, (int) Math.round(REACH * Math.max(w, h)));
        for (float darker : DARKER) {
            boolean[] mask = new boolean[dark.length];
            for (int i = 0; i < mask.length; i++) {
                mask[i] = dark[i] > darker;
            }
            search.look(Regions.of(mask, w, h, 30));
        }
        return search.found;
    }

    private void look(List<Region> parts) {
        double all = (double) image.width() * image.height();
        List<Ring> rings = parts.stream()
                .flatMap(r -> ring(r, all))
                .sorted(Comparator.comparingDouble((Ring r) -> -r.quad().area()))
                .toList();
        for (Ring ring : rings) {
            parts.stream().filter(p -> isWell(p, ring)).limit(2).forEach(well -> propose(ring, well));
        }
    }

    private static Stream<Ring> ring(Region r, double all) {
        double hull = Hull.area(r.hull());
        double solid = r.area() / Math.max(1, hull);
        if (hull < MIN_SHARE * all || hull > MAX_SHARE * all || solid > 0.85) {
            return Stream.empty();
        }
        return QuadFitter.fit(r.hull())
                .filter(f -> f.fit() >= MIN_FIT
                        && f.quad().aspect() >= 1.4
                        && f.quad().aspect() <= 5.5)
                .map(f -> new Ring(f.quad(), r))
                .stream();
    }

    /** Round, of the window's breadth or somewhat more, in line with it and beside it. */
    private static boolean isWell(Region p, Ring ring) {
        double w = p.width();
        double h = p.height();
        double size = Math.max(w, h);
        double breadth = ring.quad().breadth();
        if (size < 0.6 * breadth || size > 1.9 * breadth || Math.min(w, h) < 0.65 * size) {
            return false;
        }
        double fill = (Hull.area(p.hull()) + w + h) / ((w + 1) * (h + 1));
        if (fill < ROUND_FROM || fill > ROUND_TO) {
            return false;
        }
        Axes axes = Axes.of(ring.quad());
        double[] at = axes.place(new Corner((p.left() + p.right()) / 2.0, (p.top() + p.bottom()) / 2.0));
        return Math.abs(at[1]) < 0.5 && Math.abs(at[0]) > 0.75 && Math.abs(at[0]) < 1.8;
    }

    private void propose(Ring ring, Region well) {
        Corner middle = new Corner((well.left() + well.right()) / 2.0, (well.top() + well.bottom()) / 2.0);
        Axes axes = Axes.of(ring.quad());
        Axes towards = axes.place(middle)[0] < 0 ? axes : axes.turned();
        for (CassetteShape shape : shapes) {
            if (found.size() < MOST) {
                outline(towards, shape)
                        .filter(q -> found.stream().noneMatch(f -> f.isLike(q, 0.01)))
                        .ifPresent(found::add);
            }
        }
    }

    private Optional<Quad> outline(Axes axes, CassetteShape shape) {
        double length = shape.windowTo() - shape.windowFrom();
        double middle = (shape.windowFrom() + shape.windowTo()) / 2;
        double from = -middle / length;
        double to = (1 - middle) / length;
        double side = 0.5 / shape.windowWidth();
        Quad guess = new Quad(axes.at(from, -side), axes.at(to, -side), axes.at(to, side), axes.at(from, side));
        return guess.length() < 30 ? Optional.empty() : Optional.of(SideFit.refine(guess, image));
    }

    /** A window's middle, its length from the sample end on and its breadth. */
    private record Axes(Corner middle, double ux, double uy, double vx, double vy) {

        static Axes of(Quad q) {
            return new Axes(
                    q.centre(),
                    (q.b().x() - q.a().x() + q.c().x() - q.d().x()) / 2,
                    (q.b().y() - q.a().y() + q.c().y() - q.d().y()) / 2,
                    (q.d().x() - q.a().x() + q.c().x() - q.b().x()) / 2,
                    (q.d().y() - q.a().y() + q.c().y() - q.b().y()) / 2);
        }

        Axes turned() {
            return new Axes(middle, -ux, -uy, -vx, -vy);
        }

        Corner at(double u, double v) {
            return new Corner(middle.x() + u * ux + v * vx, middle.y() + u * uy + v * vy);
        }

        /** How many window lengths along and breadths across a place lies. */
        double[] place(Corner p) {
            double dx = p.x() - middle.x();
            double dy = p.y() - middle.y();
            double det = ux * vy - uy * vx;
            return new double[] {(dx * vy - dy * vx) / det, (ux * dy - uy * dx) / det};
        }
    }
}
