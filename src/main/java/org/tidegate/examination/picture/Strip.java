package org.tidegate.examination.picture;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.tidegate.finding.PictureFinding.Line;
import org.tidegate.rules.Protocol.CassetteShape;
import org.tidegate.rules.Protocol.LinePlace;

/** The membrane inside a result window, upright, sample end left. */
final class Strip {

    private static final int LENGTH = 240;
    private static final int HEIGHT = 48;

    private static final double PLACE_TOLERANCE = 0.15;
    /** How near to each other two lines may lie, against where the kit has them. */
    private static final double APART = 0.65;

    private static final double LIGHT = 0.14;

    /** A dye takes at most this share of what it takes of its strongest colour from its weakest. */
    private static final double DYED = 0.7;

    private static final int GREEN = 8;
    private static final int RED = 16;
    private static final int BLUE = 0;

    private final LineProfile green;
    private final LineProfile red;
    private final LineProfile blue;

    private Strip(Pixels pixels) {
        this.green = LineProfile.of(pixels, GREEN);
        this.red = LineProfile.of(pixels, RED);
        this.blue = LineProfile.of(pixels, BLUE);
    }

    static Strip in(Body body, Pixels image) {
        Body.Box w = body.window();
        double height = w.toV() - w.fromV();
        Quad middle = body.outline().part(w.fromU(), w.fromV() + 0.3 * height, w.toU(), w.toV() - 0.3 * height);
        Pixels whole = Homography.toQuad(middle).rectify(image, LENGTH, HEIGHT);
        double[] ends = Membrane.ends(whole);
        Quad inner = middle.part(ends[0], 0, ends[1], 1);
        return new Strip(Homography.toQuad(inner).rectify(image, LENGTH, HEIGHT));
    }

    /** Share of the length that is as light as the membrane: lines take little of it, print much. */
    double lightShare() {
        return green.lightShare(LIGHT);
    }

    /** How light and colourless the membrane is: its weakest channel, 0–255. */
    double white() {
        return Math.min(green.light(), Math.min(red.light(), blue.light()));
    }

    /** Each line of the kit where it should be. */
    Map<String, Line> lines(CassetteShape shape, double least) {
        Map<String, Line> lines = new LinkedHashMap<>();
        for (LinePlace place : shape.lines()) {
            Line g = line(green, place, shape, least);
            Line r = line(red, place, shape, least);
            lines.put(place.name(), r.strength() > g.strength() ? r : g);
        }
        return lines;
    }

    /** Whether a line of the kit takes clearly more of one colour than of another, as dyes do and print does not. */
    boolean showsDye(CassetteShape shape, double least) {
        return shape.lines().stream().anyMatch(place -> {
            int at = strongest(
                    green.contrastAt(strongest(green, place)) > red.contrastAt(strongest(red, place)) ? green : red,
                    place);
            double[] taken = {red.contrastAt(at), green.contrastAt(at), blue.contrastAt(at)};
            Arrays.sort(taken);
            return taken[2] >= least && taken[0] <= DYED * taken[2];
        });
    }

    private static Line line(LineProfile profile, LinePlace place, CassetteShape shape, double least) {
        Optional<LinePlace> other =
                shape.lines().stream().filter(l -> l.at() != place.at()).findFirst();
        int otherAt = other.map(l -> strongest(profile, l)).orElse(0);
        int at = strongest(profile, place);
        boolean besideStronger = other.isPresent() && profile.contrastAt(otherAt) > profile.contrastAt(at);
        return profile.lineAt(besideStronger ? strongest(profile, place, other.get(), otherAt) : at, otherAt, least);
    }

    private static int strongest(LineProfile profile, LinePlace place) {
        return profile.strongest(from(place), to(place));
    }

    /** The same away from a stronger line: compression leaves a lighter and a darker edge of its colour beside it. */
    private static int strongest(LineProfile profile, LinePlace place, LinePlace other, int otherAt) {
        double there = (double) otherAt / LENGTH;
        double apart = APART * Math.abs(other.at() - place.at());
        return other.at() > place.at()
                ? profile.strongest(from(place), Math.max(from(place), Math.min(to(place), there - apart)))
                : profile.strongest(Math.min(to(place), Math.max(from(place), there + apart)), to(place));
    }

    private static double from(LinePlace place) {
        return Math.max(0.06, place.at() - PLACE_TOLERANCE);
    }

    private static double to(LinePlace place) {
        return Math.min(0.94, place.at() + PLACE_TOLERANCE);
    }
}
