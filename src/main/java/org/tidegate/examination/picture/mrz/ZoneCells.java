package org.tidegate.examination.picture.mrz;

import java.util.Arrays;

/**
 * What the characters of a zone look like, in one font, one way up.
 *
 * @param scores log-likelihood of each glyph at each place in reading order, the glyph's distance included
 * @param fit how well all of it looks like characters: the mean of the best, higher is better
 */
record ZoneCells(int font, double[][] scores, double fit) {

    /**
     * Learned shapes are surer of themselves than pictures from unknown cameras allow; so much softer are their words taken (a
     * judgement, not calibrated).
     */
    private static final double SOFTER = 6;

    /** The font that fits best. */
    static ZoneCells of(CellWindow[] cells) {
        GlyphModel model = GlyphModel.standard();
        double[][][] all = new double[model.fonts()][cells.length][];
        for (int i = 0; i < cells.length; i++) {
            double[][] fonts = model.scores(cells[i]);
            for (int f = 0; f < fonts.length; f++) {
                all[f][i] = fonts[f];
            }
        }
        ZoneCells best = null;
        for (int f = 0; f < all.length; f++) {
            double fit = Arrays.stream(all[f])
                    .mapToDouble(s -> Arrays.stream(s).max().orElse(0))
                    .average()
                    .orElse(0);
            if (best == null || fit > best.fit()) {
                best = new ZoneCells(f, all[f], fit);
            }
        }
        return best == null ? new ZoneCells(0, new double[0][], 0) : best;
    }

    /** The glyph that each place looks most like. */
    int[] best() {
        return Arrays.stream(scores).mapToInt(ZoneCells::best).toArray();
    }

    private static int best(double[] scores) {
        int best = 0;
        for (int g = 1; g < scores.length; g++) {
            best = scores[g] > scores[best] ? g : best;
        }
        return best;
    }

    /** Likelihood of each glyph at each place, given what may stand there; each place's sum is one. */
    double[][] likely(double[][] allowed) {
        double[][] out = new double[scores.length][];
        for (int i = 0; i < out.length; i++) {
            out[i] = likely(scores[i], allowed[i]);
        }
        return out;
    }

    private static double[] likely(double[] scores, double[] allowed) {
        double top = Double.NEGATIVE_INFINITY;
        for (int g = 0; g < scores.length; g++) {
            top = allowed[g] > 0 ? Math.max(top, scores[g]) : top;
        }
        double[] out = new double[scores.length];
        double sum = 0;
        for (int g = 0; g < scores.length; g++) {
            out[g] = allowed[g] * StrictMath.exp((scores[g] - top) / SOFTER);
            sum += out[g];
        }
        for (int g = 0; g < out.length; g++) {
            out[g] /= sum;
        }
        return out;
    }
}
