package org.tidegate.examination.picture.mrz;

/**
 * Where the ink of a cell lies.
 *
 * @param x its middle, share of the cell's width from the centre
 * @param y likewise down
 * @param spread standard deviation up and down, share of the cell's height
 */
record InkMoments(double x, double y, double spread) {

    /** What is paler than this share of the darkest is left away. */
    private static final float PALE = 0.3f;

    InkMoments turned() {
        return new InkMoments(-x, -y, spread);
    }

    static InkMoments of(float[] ink, int width, int height) {
        float most = 0;
        for (float v : ink) {
            most = Math.max(most, v);
        }
        double n = 1e-9;
        double sx = 0;
        double sy = 0;
        double syy = 0;
        for (int i = 0; i < ink.length; i++) {
            double v = Math.max(0, ink[i] - PALE * most);
            double u = (i % width + 0.5) / width - 0.5;
            double w = (Math.floorDiv(i, width) + 0.5) / height - 0.5;
            n += v;
            sx += v * u;
            sy += v * w;
            syy += v * w * w;
        }
        double y = sy / n;
        return new InkMoments(sx / n, y, Math.sqrt(Math.max(0, syy / n - y * y)));
    }
}
