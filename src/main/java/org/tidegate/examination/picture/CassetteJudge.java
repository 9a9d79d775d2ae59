package org.tidegate.examination.picture;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidegate.finding.PictureFinding.Line;
import org.tidegate.rules.PictureRules;
import org.tidegate.rules.Protocol;
import org.tidegate.rules.Protocol.LinePlace;

/** How much an outline in a picture is a cassette: what is seen of window, well and lines, and what else it looks like. */
final class CassetteJudge {

    /** Plain share from which something may well be a cassette. */
    private static final double CASSETTE = 0.93;

    /** The same of one whose window, well and lines are plain to see: fingers and handwriting may hide the rest. */
    private static final double HELD = 0.75;

    /** The same of one on which lines and well lie where they must. */
    private static final double HALF = 0.35;

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

    /** How far from the kit's place a window's middle may lie, as shares of the length: with nothing said, and at most. */
    private static final double IN_PLACE = 0.08;

    private static final double OUT_OF_PLACE = 0.2;

    /** So many times that, where a hand may hide an end. */
    private static final double HIDDEN_END = 1.7;

    /** What lines in their places say of the sample end, where no well was seen. */
    private static final double TOLD = 0.8;

    /** A strip that shows dye but no control line is rarer than a wrong idea of where things lie. */
    private static final double LONELY_TEST_LINE = 0.15;

    /** Contrast up to which a line may well be dye that a membrane has drawn in, and from which on it is ink. */
    private static final double DYE = 0.86;

    private static final double INK = 0.94;

    /** Contrast of a line that speaks for a cassette. */
    private static final double PLAIN_LINE = 0.08;

    /**
     * One way to see what is within an outline.
     *
     * @param parts what was seen of window, well and lines, 0–1
     * @param likeness how much surface, membrane and proportions are the kit's, 0–1
     */
    private record Draft(Body body, Protocol kit, Strip strip, Map<String, Line> lines, double parts, double likeness) {

        double quality() {
            return parts * (0.4 + 0.6 * likeness);
        }

        /** Lines in their places say more of the window and of the sample end than a rim and wells, which print and handwriting imitate. */
        boolean isToldByLines() {
            return body.byLines() && body.windowQuality() > PLAIN_TO_SEE;
        }

        CassetteCandidate with(CassetteSigns signs) {
            return new CassetteCandidate(body, kit, lines, parts, likeness, signs);
        }
    }

    private final Pixels image;
    private final List<Protocol> kits;
    private final PictureRules rules;
    private final CassetteSigns.View view;

    CassetteJudge(Pixels image, List<Protocol> kits, PictureRules rules) {
        this.image = image;
        this.kits = kits;
        this.rules = rules;
        this.view = new CassetteSigns.View(
                image,
                image.shrunkTo(QuadSearch.SIDE),
                image.green(BRIGHTEST),
                kits.stream().map(Protocol::cassette).distinct().toList());
    }

    CassetteSigns.View view() {
        return view;
    }

    /** @return empty where it has no window, or where no kit is looked for */
    Optional<CassetteCandidate> judge(QuadSearch.Found found) {
        BodyInside inside = BodyInside.of(found.quad(), image);
        Stream<Draft> byWindow = Body.read(found.quad(), inside, image).stream()
                .flatMap(body -> nearest(body).stream().map(kit -> judged(found, body, kit)));
        Stream<Draft> byLines = kits.stream()
                .flatMap(kit -> Body.byLines(found.quad(), inside, kit.cassette()).stream()
                        .map(body -> judged(found, body, kit)));
        return Stream.concat(byWindow, byLines)
                .max(Comparator.comparingDouble(d -> d.quality() + (d.isToldByLines() ? 1 : 0)))
                .map(d -> d.with(CassetteSigns.of(found, inside, d.strip, d.lines, view)));
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
        return !body.byLines()
                        && body.well() < 1
                        && !shows(LinePlace.CONTROL, body, kit)
                        && shows(LinePlace.CONTROL, body.turned(), kit)
                ? body.turned()
                : body;
    }

    private boolean shows(String line, Body body, Protocol kit) {
        Line found = Strip.in(body, image).lines(kit.cassette(), rules.lineAt()).get(line);
        return found != null && found.present();
    }

    private Draft judged(QuadSearch.Found found, Body seen, Protocol kit) {
        Body body = upright(seen, kit);
        Strip strip = Strip.in(body, image);
        Map<String, Line> lines = strip.lines(kit.cassette(), rules.lineAt());
        boolean anyLine = lines.values().stream().anyMatch(l -> l.present() && l.strength() > PLAIN_LINE);
        double strongest =
                lines.values().stream().mapToDouble(Line::strength).max().orElse(0);
        boolean dyed = (body.byLines() || anyLine)
                && strip.showsDye(kit.cassette(), body.byLines() ? PLAIN_LINE / 2 : PLAIN_LINE);
        double noise = lines.values().stream().mapToDouble(Line::noise).min().orElse(0);
        boolean control = Optional.ofNullable(lines.get(LinePlace.CONTROL))
                .map(Line::present)
                .orElse(true);
        double aspect = body.outline().aspect() / kit.cassette().aspect();
        double window = body.windowQuality() * (body.byLines() ? Body.within(aspect, 0.55, 0.92, 1.12, 1.6) : 1);
        double parts = 0.4 * window
                + 0.25 * (body.byLines() && dyed ? Math.max(TOLD * window * window, body.well()) : body.well())
                + (dyed ? 0.25 : body.byLines() && control ? 0.18 : anyLine ? 0.1 : 0)
                + Body.within(found.fit(), 0.84, 0.96, 2, 3) * 0.1
                - (dyed && !control ? LONELY_TEST_LINE : 0);
        boolean unmistakable =
                dyed && (body.well() == 1 || body.byLines()) && body.windowQuality() > PLAIN_TO_SEE && noise < CALM / 2;
        double likeness = (unmistakable
                        ? Body.within(
                                body.own(), body.byLines() && body.well() == 1 ? HALF : Body.CLUTTERED, HELD, 2, 3)
                        : Body.within(body.own(), Body.PAGE, CASSETTE, 2, 3))
                * Body.within(strip.white() / Math.max(1, view.brightest()), SHADED, LIT, 2, 3)
                * (unmistakable ? 1 : Body.within(strip.lightShare(), PRINTED, MEMBRANE, 2, 3))
                * (1 - Body.within(noise, CALM, RESTLESS, 2, 3))
                * Body.within(strongest, -2, -1, DYE, INK)
                * inPlace(outOfPlace(body, kit.cassette()), unmistakable)
                * Body.within(aspect, 0.62, 0.72, 1.5, 1.75);
        return new Draft(body, kit, strip, lines, parts, likeness);
    }

    /** A hand over one end makes a cassette look shorter, and its window further off. */
    private static double inPlace(double off, boolean unmistakable) {
        double room = unmistakable ? HIDDEN_END : 1;
        return Body.within(off, -2, -1, room * IN_PLACE, room * OUT_OF_PLACE);
    }
}
