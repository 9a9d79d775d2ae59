package org.tidegate.examination.picture;

import java.util.Map;
import org.tidegate.finding.PictureFinding.Line;
import org.tidegate.rules.Protocol;

/**
 * Something that may be a cassette. Several may be drafts of one body, of which each saw something better.
 *
 * @param parts what was seen of window, well and lines, 0–1
 * @param likeness how much surface, membrane and proportions are the kit's, 0–1
 * @param signs what speaks for it being a cassette
 */
record CassetteCandidate(
        Body body, Protocol kit, Map<String, Line> lines, double parts, double likeness, CassetteSigns signs) {

    /** Shared part from which two lie in one place. */
    private static final double OVERLAP = 0.3;

    private static final double TINY = 0.5;

    /** Shared part and likeness in area from which two outlines are drafts of one body, of which one may tell the lines better and the other the outline. */
    private static final double SAME_BODY = 0.85;

    private static final double SAME_AREA = 0.7;

    /** Probability that it is a cassette. */
    double confidence() {
        return signs.likelihood();
    }

    boolean isDraftOf(CassetteCandidate other) {
        double mine = body.outline().area();
        double others = other.body().outline().area();
        return Math.min(mine, others) >= SAME_AREA * Math.max(mine, others)
                && body.outline().sharedWith(other.body().outline()) >= SAME_BODY;
    }

    /** How plainly its own parts were seen, whatever others saw. */
    double clarity() {
        double noise = lines.values().stream().mapToDouble(Line::noise).min().orElse(0);
        return parts * (1 + body.own()) * (2 + likeness) / 6 - noise;
    }

    /** How little else than the body its outline takes in, and how much of the body. */
    double snugness() {
        return body.plain() * Math.sqrt(body.outline().area());
    }

    /** Cassettes of one picture are about as large: less is print. */
    boolean isTinyBeside(CassetteCandidate other) {
        return body.outline().length() < TINY * other.body().outline().length();
    }

    boolean covers(Quad other) {
        return body.outline().sharedWith(other) > OVERLAP;
    }
}
