package org.tidegate.examination.picture;

import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.finding.PictureFinding.Line;
import org.tidegate.rules.PictureRules;
import org.tidegate.rules.Protocol;

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

    private static final double OVERLAP = 0.3;
    private static final double TINY = 0.5;

    /** Nothing better is looked for in the place of such a one. */
    private static final double CERTAIN = 0.94;

    private static final double CLEAR = 0.95;

    /** Plain share from which something may well be a cassette. */
    private static final double CASSETTE = 0.93;

    /** The same of one whose window, well and lines are plain to see: fingers and handwriting may hide the rest. */
    private static final double HELD = 0.75;

    private static final double PLAIN_TO_SEE = 0.75;

    /** A membrane is white: how light it is against the brightest of the picture, even in a shadow. */
    private static final double BRIGHTEST = 0.99;

    private static final double SHADED = 0.3;

    private static final double LIT = 0.42;

    /** Light shares of a strip below which it is print, and from which it may well be a membrane. */
    private static final double PRINTED = 0.6;

    private static final double MEMBRANE = 0.76;

    /** Unrest along a strip up to which it may well be a membrane, and from which on it is print. */
    private static final double CALM = 0.04;

    private static final double RESTLESS = 0.08;

    /** Shared part and likeness in area from which two outlines are drafts of one body, so that what either saw of its parts counts for both. */
    private static final double SAME_BODY = 0.85;

    private static final double SAME_AREA = 0.7;

    /** How far from the kit's place a window's middle may lie, as shares of the length: with nothing said, and at most. */
    private static final double IN_PLACE = 0.08;

    private static final double OUT_OF_PLACE = 0.2;

    /** So many times that, where a hand may hide an end. */
    private static final double HIDDEN_END = 1.7;

    private static final String CONTROL = "C";

    /**
     * @param ownParts what was seen of window, well and lines, 0–1
     * @param parts the same by any draft of the body
     * @param likeness how much surface, membrane and proportions are a cassette's, 0–1
     */
    private record Candidate(
            Body body, Protocol kit, Map<String, Line> lines, double ownParts, double parts, double likeness) {

        double confidence() {
            return parts * (0.4 + 0.6 * likeness);
        }

        Candidate with(double otherParts) {
            return new Candidate(body, kit, lines, ownParts, Math.max(parts, otherParts), likeness);
        }

        boolean isDraftOf(Candidate other) {
            double mine = body.outline().area();
            double others = other.body().outline().area();
            return Math.min(mine, others) >= SAME_AREA * Math.max(mine, others)
                    && body.outline().sharedWith(other.body().outline()) >= SAME_BODY;
        }

        /** How plainly its own parts were seen, whatever others saw. */
        double clarity() {
            double noise =
                    lines.values().stream().mapToDouble(Line::noise).min().orElse(0);
            return ownParts * body.plain() - noise;
        }

        /** How little else than the body its outline takes in, and how much of the body. */
        double snugness() {
            return body.plain() * Math.sqrt(body.outline().area());
        }

        /** Cassettes of one picture are about as large: less is print. */
        boolean isTinyBeside(Candidate other) {
            return body.outline().length() < TINY * other.body().outline().length();
        }

        boolean covers(Quad other) {
            return body.outline().sharedWith(other) > OVERLAP;
        }
    }

    private record Glance(QuadSearch.Found found, Surface surface) {}

    private final Pixels image;
    private final List<Protocol> kits;
    private final PictureRules rules;
    private final int brightest;

    private CassetteFinder(Pixels image, List<Protocol> kits, PictureRules rules) {
        this.image = image;
        this.kits = kits;
        this.rules = rules;
        this.brightest = image.green(BRIGHTEST);
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
        return new CassetteFinder(image, kits, rules).among(quads);
    }

    private List<CassetteFinding> among(List<QuadSearch.Found> quads) {
        List<Candidate> candidates = new ArrayList<>();
        Stream.concat(elongated(fromInside()), lightest(elongated(quads.stream())))
                .limit(MOST_CANDIDATES)
                .filter(f -> candidates.stream()
                        .noneMatch(c -> c.confidence() >= CERTAIN && c.clarity() >= CLEAR && c.covers(f.quad())))
                .forEach(f -> candidate(f).ifPresent(candidates::add));
        List<Candidate> kept = new ArrayList<>();
        for (Candidate c : supported(candidates)) {
            if (kept.stream().noneMatch(k -> k.covers(c.body().outline()) || c.isTinyBeside(k))) {
                kept.add(c);
            }
        }
        return kept.stream()
                .filter(c -> c.confidence() >= rules.cassetteAt())
                .map(c -> finding(c, best(c, candidates, Candidate::snugness), best(c, candidates, Candidate::clarity)))
                .toList();
    }

    private static Stream<QuadSearch.Found> elongated(Stream<QuadSearch.Found> found) {
        return found.filter(f -> f.quad().aspect() >= SHORTEST && f.quad().aspect() <= LONGEST)
                .filter(f -> f.quad().length() >= LEAST_LENGTH);
    }

    /** White things first, and none that are all checks or print: a patterned table is full of outlines. */
    private Stream<QuadSearch.Found> lightest(Stream<QuadSearch.Found> found) {
        return found.map(f -> new Glance(f, Surface.of(f.quad(), image, GLANCE, GLANCE / 3)))
                .filter(g -> g.surface().plainShare(Body.PLAIN) >= Body.CLUTTERED)
                .sorted(Comparator.comparingDouble((Glance g) -> g.surface().white())
                        .reversed())
                .map(Glance::found);
    }

    /** An outline from inside knows the window better, one from outside the body: most certain first. */
    private static List<Candidate> supported(List<Candidate> candidates) {
        return candidates.stream()
                .map(c -> c.with(candidates.stream()
                        .filter(c::isDraftOf)
                        .mapToDouble(Candidate::parts)
                        .max()
                        .orElse(0)))
                .sorted(Comparator.comparingDouble(Candidate::confidence).reversed())
                .toList();
    }

    private Stream<QuadSearch.Found> fromInside() {
        Pixels small = image.shrunkTo(QuadSearch.SIDE);
        double scale = image.scaleOver(small);
        return RingSearch.in(
                        small, kits.stream().map(Protocol::cassette).distinct().toList())
                .stream()
                .map(q -> new QuadSearch.Found(q.scaled(scale), 0.9, 1));
    }

    /** The draft of that body that is best by some measure. */
    private static Candidate best(Candidate kept, List<Candidate> drafts, ToDoubleFunction<Candidate> measure) {
        return drafts.stream()
                .filter(kept::isDraftOf)
                .max(Comparator.comparingDouble(measure))
                .orElse(kept);
    }

    /** The snuggest outline, its sample end where the clearest draft has it. */
    private static CassetteFinding finding(Candidate kept, Candidate snuggest, Candidate clearest) {
        Quad outline = snuggest.body().outline();
        Quad other = clearest.body().outline();
        boolean alike = Quad.distance(outline.a(), other.a()) <= Quad.distance(outline.a(), other.c());
        return new CassetteFinding(
                (alike ? outline : outline.turned()).corners(),
                Optional.of(clearest.kit().kit()),
                kept.confidence(),
                clearest.lines());
    }

    private Optional<Candidate> candidate(QuadSearch.Found found) {
        return Body.read(found.quad(), image).flatMap(body -> nearest(body).map(kit -> judged(found, body, kit)));
    }

    /** The kit whose proportions and window place are nearest. */
    private Optional<Protocol> nearest(Body body) {
        return kits.stream().min(Comparator.comparingDouble(kit -> misfit(body, kit.cassette())));
    }

    private static double misfit(Body body, Protocol.CassetteShape shape) {
        double aspect = Math.abs(Math.log(body.outline().aspect() / shape.aspect()));
        return aspect + 2 * outOfPlace(body, shape);
    }

    private static double outOfPlace(Body body, Protocol.CassetteShape shape) {
        return Math.abs(body.window().centreU() - (shape.windowFrom() + shape.windowTo()) / 2);
    }

    /** Where no well tells one end from the other, a lonely line is the control line: a test line alone is far rarer. */
    private Body upright(Body body, Protocol kit) {
        return body.well() < 1 && !shows(CONTROL, body, kit) && shows(CONTROL, body.turned(), kit)
                ? body.turned()
                : body;
    }

    private boolean shows(String line, Body body, Protocol kit) {
        Line found = Strip.in(body, image).lines(kit.cassette(), rules.lineAt()).get(line);
        return found != null && found.present();
    }

    private Candidate judged(QuadSearch.Found found, Body seen, Protocol kit) {
        Body body = upright(seen, kit);
        Strip strip = Strip.in(body, image);
        Map<String, Line> lines = strip.lines(kit.cassette(), rules.lineAt());
        boolean anyLine = lines.values().stream().anyMatch(l -> l.present() && l.strength() > 2 * rules.lineAt());
        boolean dyed = anyLine && strip.showsDye(kit.cassette(), 2 * rules.lineAt());
        double noise = lines.values().stream().mapToDouble(Line::noise).min().orElse(0);
        double parts = 0.4 * body.windowQuality()
                + 0.25 * body.well()
                + (dyed ? 0.25 : anyLine ? 0.1 : 0)
                + Body.within(found.fit(), 0.84, 0.96, 2, 3) * 0.1;
        double aspect = body.outline().aspect() / kit.cassette().aspect();
        boolean unmistakable = dyed && body.well() == 1 && body.windowQuality() > PLAIN_TO_SEE && noise < CALM / 2;
        double likeness = (unmistakable
                        ? Body.within(body.plain(), Body.CLUTTERED, HELD, 2, 3)
                        : Body.within(body.plain(), Body.PAGE, CASSETTE, 2, 3))
                * Body.within(strip.white() / Math.max(1, brightest), SHADED, LIT, 2, 3)
                * Body.within(strip.lightShare(), PRINTED, MEMBRANE, 2, 3)
                * (1 - Body.within(noise, CALM, RESTLESS, 2, 3))
                * inPlace(outOfPlace(body, kit.cassette()), unmistakable)
                * Body.within(aspect, 0.62, 0.72, 1.5, 1.75);
        return new Candidate(body, kit, lines, parts, parts, likeness);
    }

    /** A hand over one end makes a cassette look shorter, and its window further off. */
    private static double inPlace(double off, boolean unmistakable) {
        double room = unmistakable ? HIDDEN_END : 1;
        return Body.within(off, -2, -1, room * IN_PLACE, room * OUT_OF_PLACE);
    }
}
