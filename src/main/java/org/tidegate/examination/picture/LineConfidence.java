package org.tidegate.examination.picture;

import org.tidegate.finding.PictureFinding.Line;
import org.tidegate.rules.PictureRules;

/**
 * What a measured line is worth: how surely dye lies there, and how faint a line could be missed. Fitted to 500 rendered pictures of the tuning ranges,
 * half of them with a line of 0.5 to 50 %, each factor as likely ({@code LineMeasure 500 4200000 OUT.png tuning}); how far it holds for a clinic's own kit is not known.
 */
public final class LineConfidence {

    /** Logistic regression on the logarithm of strength over noise. */
    private static final double AT_NOISE = -2.77;

    private static final double PER_FOLD = 5.28;

    /** No strip is quieter than this: smooth compression hides noise, not error. */
    private static final double FLOOR = 0.005;

    private LineConfidence() {}

    /** @return probability that there is a line, 0–1 */
    public static double of(Line line) {
        double folds = Math.log((line.strength() + FLOOR) / (line.noise() + FLOOR));
        return 1 / (1 + Math.exp(-(AT_NOISE + PER_FOLD * folds)));
    }

    /** Contrast below which a line at that place is not told from none, 0–1. */
    public static double limit(Line line, PictureRules rules) {
        return LineProfile.threshold(line.noise(), rules.lineAt());
    }
}
