package org.tidegate.examination.picture;

import java.util.Map;
import org.tidegate.finding.PictureFinding.Line;
import org.tidegate.rules.Protocol;

/**
 * Something that may be a cassette. Several may be drafts of one body, of which each saw something better.
 *
 * @param ownParts what was seen of window, well and lines, 0–1
 * @param parts the same by any draft of the body
 * @param likeness how much surface, membrane and proportions are a cassette's, 0–1
 */
record CassetteCandidate(
        Body body, Protocol kit, Map<String, Line> lines, double ownParts, double parts, double likeness) {

    /** Shared part from which two lie in one place. */
    private static final double OVERLAP = 0.3;

    private static final double TINY = 0.5;

    /** Shared part and likeness in area from which two outlines are drafts of one body, so that what either saw of its parts counts for both. */
    private static final double SAME_BODY = 0.85;

    private static final double SAME_AREA = 0.7;

    double confidence() {
        return parts * (0.4 + 0.6 * likeness);
    }

    CassetteCandidate with(double otherParts) {
        return new CassetteCandidate(body, kit, lines, ownParts, Math.max(parts, otherParts), likeness);
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
        return ownParts * (1 + body.own()) * (1 + likeness) / 4 - noise;
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
