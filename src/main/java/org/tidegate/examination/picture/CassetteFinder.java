package org.tidegate.examination.picture;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.rules.PictureRules;
import org.tidegate.rules.Protocol;
import org.tidegate.rules.Protocol.CassetteShape;

/**
 * Finds test cassettes: elongated four-cornered bodies with a light result window in their middle line, told from other elongated things by
 * the window, the sample well beside it and a line across the strip.
 */
public final class CassetteFinder {

    private static final double SHORTEST = 2;
    private static final double LONGEST = 5.8;
    private static final int LEAST_LENGTH = 60;
    private static final int MOST_CANDIDATES = 40;

    /** Length in pixels at which a glance tells checks and print from a body. */
    private static final int GLANCE = 85;

    /** Nothing better is looked for in the place of such a one. */
    private static final double CERTAIN = 0.98;

    /** As plainly as that, so that no other draft tells its lines better. */
    private static final double CLEAR = 0.96;

    private static final double BORDER = 3;

    /** A draft tells lines or outline of another one only if it is itself so likely, against that. */
    private static final double AS_SURE = 0.8;

    /** From here on a well tells the sample end. */
    private static final double PLAIN_WELL = 0.8;

    /** Outlines from inside are four-cornered because they were drawn so: their edges tell how good they are. */
    private static final double FROM_INSIDE = 0.97;

    private record Glance(QuadSearch.Found found, Surface surface) {}

    private final Pixels image;
    private final List<Protocol> kits;
    private final CassetteJudge judge;

    private CassetteFinder(Pixels image, List<Protocol> kits, PictureRules rules) {
        this.image = image;
        this.kits = kits;
        this.judge = new CassetteJudge(image, kits, rules);
    }

    /**
     * @param image upright, at most about 1,600 pixels on its longer side
     * @param kits whose lines are looked for; none finds nothing
     * @return most certain first; each at or above {@code cassetteAt}
     */
    public static List<CassetteFinding> find(BufferedImage image, List<Protocol> kits, PictureRules rules) {
        Pixels pixels = Pixels.of(image);
        return find(pixels, QuadSearch.in(pixels), kits, rules);
    }

    static List<CassetteFinding> find(
            Pixels image, List<QuadSearch.Found> quads, List<Protocol> kits, PictureRules rules) {
        return chosen(candidates(image, quads, kits, rules), rules);
    }

    /** All that was looked at, the likeliest first. */
    static List<CassetteCandidate> candidates(
            Pixels image, List<QuadSearch.Found> quads, List<Protocol> kits, PictureRules rules) {
        return new CassetteFinder(image, kits, rules).candidates(quads);
    }

    private List<CassetteCandidate> candidates(List<QuadSearch.Found> quads) {
        List<CassetteCandidate> candidates = new ArrayList<>();
        Stream.concat(
                        elongated(fromInside(RingSearch::in)),
                        lightest(elongated(quads.stream()).filter(this::isInView)))
                .limit(MOST_CANDIDATES)
                .filter(f -> isOpen(f, candidates))
                .forEach(f -> judge.judge(f).ifPresent(candidates::add));
        lightest(elongated(fromInside(BarSearch::in)))
                .filter(f -> isOpen(f, candidates))
                .forEach(f -> judge.judge(f).ifPresent(candidates::add));
        candidates.sort(
                Comparator.comparingDouble(CassetteCandidate::confidence).reversed());
        return candidates;
    }

    /** Of those that lie in one place the likeliest. */
    static List<CassetteFinding> chosen(List<CassetteCandidate> candidates, PictureRules rules) {
        List<CassetteCandidate> kept = new ArrayList<>();
        for (CassetteCandidate c : candidates) {
            if (kept.stream().noneMatch(k -> k.covers(c.body().outline()) || c.isTinyBeside(k))) {
                kept.add(c);
            }
        }
        return kept.stream()
                .filter(c -> c.confidence() >= rules.cassetteAt())
                .map(c -> finding(c, drafts(c, candidates)))
                .toList();
    }

    /** Nothing so certain lies there that a further look is idle. */
    private static boolean isOpen(QuadSearch.Found found, List<CassetteCandidate> candidates) {
        return candidates.stream()
                .noneMatch(c -> c.confidence() >= CERTAIN && c.clarity() >= CLEAR && c.covers(found.quad()));
    }

    private static Stream<QuadSearch.Found> elongated(Stream<QuadSearch.Found> found) {
        return found.filter(f -> f.quad().aspect() >= SHORTEST && f.quad().aspect() <= LONGEST)
                .filter(f -> f.quad().length() >= LEAST_LENGTH);
    }

    /** What has three corners on the picture's border is a part of the table that something else cuts off. */
    private boolean isInView(QuadSearch.Found found) {
        return found.quad().corners().stream()
                        .filter(c -> Math.min(c.x(), c.y()) <= BORDER
                                || c.x() >= image.width() - 1 - BORDER
                                || c.y() >= image.height() - 1 - BORDER)
                        .count()
                < 3;
    }

    /** White things first, and none that are all checks or print: a patterned table is full of outlines. */
    private Stream<QuadSearch.Found> lightest(Stream<QuadSearch.Found> found) {
        return found.map(f -> new Glance(f, Surface.of(f.quad(), image, GLANCE, GLANCE / 3)))
                .filter(g -> Body.own(g.surface()) >= Body.CLUTTERED)
                .sorted(Comparator.comparingDouble((Glance g) -> g.surface().white())
                        .reversed())
                .map(Glance::found);
    }

    private Stream<QuadSearch.Found> fromInside(BiFunction<Pixels, List<CassetteShape>, List<Quad>> search) {
        Pixels small = judge.view().small();
        double scale = image.scaleOver(small);
        List<CassetteShape> shapes =
                kits.stream().map(Protocol::cassette).distinct().toList();
        return search.apply(small, shapes).stream().map(q -> new QuadSearch.Found(q.scaled(scale), FROM_INSIDE, 1));
    }

    private static List<CassetteCandidate> drafts(CassetteCandidate kept, List<CassetteCandidate> candidates) {
        return candidates.stream()
                .filter(d -> d.equals(kept) || d.confidence() > AS_SURE * kept.confidence() && kept.isDraftOf(d))
                .toList();
    }

    /** The snuggest outline with the lines of the clearest draft, none of which may have the sample end where a well tells that it is not. */
    private static CassetteFinding finding(CassetteCandidate kept, List<CassetteCandidate> drafts) {
        CassetteCandidate welled = best(drafts, c -> c.body().well());
        CassetteCandidate clearest = best(
                drafts.stream()
                        .filter(d -> welled.body().well() < PLAIN_WELL
                                || isAlike(d.body().outline(), welled.body().outline()))
                        .toList(),
                CassetteCandidate::clarity);
        Quad outline = best(drafts, CassetteCandidate::snugness).body().outline();
        return new CassetteFinding(
                (isAlike(outline, clearest.body().outline()) ? outline : outline.turned()).corners(),
                Optional.of(clearest.kit().kit()),
                kept.confidence(),
                clearest.lines());
    }

    private static CassetteCandidate best(List<CassetteCandidate> drafts, ToDoubleFunction<CassetteCandidate> measure) {
        return drafts.stream().max(Comparator.comparingDouble(measure)).orElseThrow();
    }

    /** Whether both have the sample end at the same place. */
    private static boolean isAlike(Quad one, Quad other) {
        return Quad.distance(one.a(), other.a()) <= Quad.distance(one.a(), other.c());
    }
}
