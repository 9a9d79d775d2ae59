package org.tidegate.examination.picture.mrz;

import java.util.List;

/**
 * Tells characters by linear discriminant analysis (Fisher 1936; normal classes that share one covariance): a mean for each glyph of each font,
 * learned at first use from the shapes of {@link GlyphSheet} and their {@link GlyphVariants}, so that nothing is stored that a person cannot see.
 */
final class GlyphModel {

    private static final int VARIANTS = 20;
    private static final double RIDGE = 0.03;
    private static final GlyphModel STANDARD = learn(GlyphSheet.fonts());

    private final int fonts;
    private final float[][] weights;
    private final float[] offsets;
    private final double[][] factor;

    private GlyphModel(int fonts, float[][] weights, float[] offsets, double[][] factor) {
        this.fonts = fonts;
        this.weights = weights;
        this.offsets = offsets;
        this.factor = factor;
    }

    static GlyphModel standard() {
        return STANDARD;
    }

    int fonts() {
        return fonts;
    }

    /** Log-likelihood of the cell under each glyph of each font, but for the factor that all cells share. */
    double[][] scores(CellWindow cell) {
        float[] x = GlyphFeatures.of(cell);
        int glyphs = GlyphSheet.GLYPHS.length();
        double[][] out = new double[fonts][glyphs];
        double spread = -0.5 * Cholesky.square(factor, x);
        for (int k = 0; k < weights.length; k++) {
            float sum = offsets[k];
            float[] w = weights[k];
            for (int i = 0; i < x.length; i++) {
                sum += w[i] * x[i];
            }
            out[k / glyphs][k % glyphs] = spread + sum;
        }
        return out;
    }

    static GlyphModel learn(List<float[][]> fonts) {
        int glyphs = GlyphSheet.GLYPHS.length();
        int classes = fonts.size() * glyphs;
        double[][] means = new double[classes][GlyphFeatures.SIZE];
        double[][] within = new double[GlyphFeatures.SIZE][GlyphFeatures.SIZE];
        for (int k = 0; k < classes; k++) {
            float[] shape = fonts.get(k / glyphs)[k % glyphs];
            Scatter.add(variants(shape, k % glyphs), means[k], within);
        }
        double[][] factor = Cholesky.of(Scatter.ridged(within, (double) classes * (VARIANTS - 1), RIDGE));
        float[][] weights = new float[classes][];
        float[] offsets = new float[classes];
        for (int k = 0; k < classes; k++) {
            double[] w = Cholesky.solve(factor, means[k]);
            weights[k] = floats(w);
            offsets[k] = (float) (-0.5 * Scatter.dot(w, means[k]));
        }
        return new GlyphModel(fonts.size(), weights, offsets, factor);
    }

    private static float[][] variants(float[] shape, long seed) {
        GlyphVariants variants = new GlyphVariants(seed);
        float[][] out = new float[VARIANTS][];
        for (int i = 0; i < VARIANTS; i++) {
            out[i] = GlyphFeatures.of(variants.next(shape));
        }
        return out;
    }

    private static float[] floats(double[] values) {
        float[] out = new float[values.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = (float) values[i];
        }
        return out;
    }
}
