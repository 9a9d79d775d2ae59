package org.tidegate.examination.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tidegate.examination.picture.Regions.Region;
import org.tidegate.finding.PictureFinding.Corner;

/**
 * Finds four-cornered things lying about: regions between edges at several steepnesses, regions brighter or darker than several levels, and neighbouring
 * regions that together fill a quad (a card whose header has its own colour).
 */
final class QuadSearch {

    /** Longer side of the picture that is searched. */
    static final int SIDE = 800;

    private static final float[] STEEPNESS = {7, 11, 17, 27, 42};
    private static final int[] LEVELS = {60, 85, 105, 125, 145, 160, 175, 190, 205, 220, 235};
    private static final double MIN_SHARE = 0.003;
    private static final double MIN_FIT = 0.86;
    private static final double MIN_SOLIDITY = 0.45;
    private static final int MOST_MERGED = 28;

    /** Outlines whose corners are nearer than this share of their length are the same. */
    private static final double SAME = 0.02;

    /**
     * @param quad in pixels of the picture searched at full size
     * @param fit area of the hull against the quad
     * @param solidity share of the hull that the region fills
     */
    record Found(Quad quad, double fit, double solidity) {}

    private final Pixels small;
    private final double scale;
    private final List<Found> found = new ArrayList<>();

    private QuadSearch(Pixels image) {
        this.small = image.shrunkTo(SIDE);
        this.scale = image.scaleOver(small);
    }

    /** Larger ones first. */
    static List<Found> in(Pixels image) {
        QuadSearch search = new QuadSearch(image);
        search.betweenEdges();
        search.besideLevels();
        search.found.sort(
                Comparator.comparingDouble((Found f) -> f.quad().area()).reversed());
        return search.found;
    }

    private void betweenEdges() {
        float[] edges = EdgeMap.of(small);
        for (float steepness : STEEPNESS) {
            boolean[] flat = new boolean[edges.length];
            for (int i = 0; i < edges.length; i++) {
                flat[i] = edges[i] < steepness;
            }
            List<Region> regions = regions(flat);
            regions.forEach(r -> keep(r.hull(), r.area(), 1.5));
            merge(regions);
        }
    }

    private void besideLevels() {
        float[] luma = EdgeMap.smooth(small.luma(), small.width(), small.height());
        for (int level : LEVELS) {
            boolean[] bright = new boolean[luma.length];
            boolean[] dark = new boolean[luma.length];
            for (int i = 0; i < luma.length; i++) {
                bright[i] = luma[i] > level;
                dark[i] = luma[i] <= level;
            }
            regions(bright).forEach(r -> keep(r.hull(), r.area(), 0));
            regions(dark).forEach(r -> keep(r.hull(), r.area(), 0));
        }
    }

    private List<Region> regions(boolean[] mask) {
        int least = (int) (MIN_SHARE * mask.length);
        return Regions.of(mask, small.width(), small.height(), least).stream()
                .filter(r -> r.area() < 0.9 * mask.length)
                .toList();
    }

    private boolean keep(List<Corner> hull, double area, double margin) {
        double solidity = area / Math.max(1, Hull.area(hull));
        if (solidity < MIN_SOLIDITY) {
            return false;
        }
        Optional<Found> quad = QuadFitter.fit(hull)
                .filter(f -> f.fit() >= MIN_FIT)
                .map(f -> new Found(f.quad().grown(margin).scaled(scale), f.fit(), solidity));
        quad.ifPresent(this::keepBest);
        return quad.isPresent();
    }

    /** The same outline is found at many levels: the squarest stays. */
    private void keepBest(Found quad) {
        for (int i = 0; i < found.size(); i++) {
            if (found.get(i).quad().isLike(quad.quad(), SAME)) {
                if (quad.fit() > found.get(i).fit()) {
                    found.set(i, quad);
                }
                return;
            }
        }
        found.add(quad);
    }

    /** Two or three solid regions that lie side by side and fill one quad. */
    private void merge(List<Region> regions) {
        List<Region> solid = regions.stream()
                .filter(r -> r.area() > 0.6 * Hull.area(r.hull()) && !isGround(r))
                .sorted(Comparator.comparingInt(Region::area).reversed())
                .limit(MOST_MERGED)
                .toList();
        for (int i = 0; i < solid.size(); i++) {
            for (int j = i + 1; j < solid.size(); j++) {
                Region joined = join(solid.get(i), solid.get(j));
                if (near(solid.get(i), solid.get(j)) && keep(joined.hull(), joined.area(), 1.5)) {
                    mergeThird(joined, solid, j);
                }
            }
        }
    }

    private void mergeThird(Region joined, List<Region> solid, int after) {
        for (int k = after + 1; k < solid.size(); k++) {
            if (near(joined, solid.get(k))) {
                Region three = join(joined, solid.get(k));
                keep(three.hull(), three.area(), 1.5);
            }
        }
    }

    /** Reaches across the whole picture. */
    private boolean isGround(Region r) {
        return r.width() > 0.95 * small.width() || r.height() > 0.95 * small.height();
    }

    private static boolean near(Region p, Region q) {
        int gap = 8;
        return p.left() <= q.right() + gap
                && q.left() <= p.right() + gap
                && p.top() <= q.bottom() + gap
                && q.top() <= p.bottom() + gap;
    }

    private static Region join(Region p, Region q) {
        List<Corner> points = new ArrayList<>(p.hull());
        points.addAll(q.hull());
        return new Region(
                p.area() + q.area(),
                Math.min(p.left(), q.left()),
                Math.min(p.top(), q.top()),
                Math.max(p.right(), q.right()),
                Math.max(p.bottom(), q.bottom()),
                Hull.of(points));
    }
}
