package org.tidegate.examination.picture;

import java.util.Optional;
import org.tidegate.finding.PictureFinding.Corner;
import org.tidegate.rules.Protocol.CassetteShape;

/**
 * What a person wrote on a cassette, as a field of strokes over the place that the kit leaves free for it, laid out by the corners of the result window. All
 * cassettes of one kit look alike: only what is written tells one from another, so a cassette without writing has none of this.
 */
final class Written {

    private static final int COLUMNS = 44;
    private static final int ROWS = 52;
    static final int CELLS = COLUMNS * ROWS;

    /** Share of the breadth left away at either side. */
    private static final double RIM = 0.07;

    /** Darkness against the body (relative) from which something is ink, and shares of the place that writing takes. */
    private static final double INK = 0.12;

    private static final double LEAST = 0.03;
    private static final double MOST = 0.4;

    /** Strokes are kept, what is broader than these is not: spreads in cells. */
    private static final double STROKE = 1.3;

    private static final double BROAD = 2.2;

    private Written() {}

    /**
     * @param straight a cassette laid straight, sample end left
     * @return row by row, about 0 in the mean; empty where nothing is written or the kit names no place for writing
     */
    static Optional<float[]> on(Pixels straight, CassetteShape shape) {
        return shape.writing().flatMap(w -> {
            double length = shape.windowTo() - shape.windowFrom();
            double above = (1 - shape.windowWidth()) / 2;
            Quad place = WindowCorners.in(straight, shape)
                    .part(
                            (w.from() - shape.windowFrom()) / length,
                            (RIM - above) / shape.windowWidth(),
                            (w.to() - shape.windowFrom()) / length,
                            (1 - RIM - above) / shape.windowWidth());
            return strokes(ink(luma(place, straight)));
        });
    }

    private static float[] luma(Quad place, Pixels straight) {
        Homography map = Homography.toQuad(place);
        float[] out = new float[CELLS];
        for (int i = 0; i < CELLS; i++) {
            long sum = 0;
            for (int s = 0; s < 4; s++) {
                Corner at = map.at(
                        (i % COLUMNS + 0.25 + 0.5 * (s & 1)) / COLUMNS,
                        (Math.floorDiv(i, COLUMNS) + 0.25 + 0.5 * (s >> 1)) / ROWS);
                sum += straight.packedAt(at.x(), at.y());
            }
            out[i] = (0.299f * Pixels.channelOf(sum, 0)
                            + 0.587f * Pixels.channelOf(sum, 1)
                            + 0.114f * Pixels.channelOf(sum, 2))
                    / 4096;
        }
        return out;
    }

    /** Darkness against the body's own colour, 0–1. */
    private static float[] ink(float[] luma) {
        Plane body = Plane.fit(luma, COLUMNS, ROWS);
        float[] ink = new float[CELLS];
        for (int i = 0; i < CELLS; i++) {
            double u = (i % COLUMNS + 0.5) / COLUMNS;
            double v = (Math.floorDiv(i, COLUMNS) + 0.5) / ROWS;
            ink[i] = (float) Math.max(0, 1 - luma[i] / Math.max(1, body.at(u, v)));
        }
        return ink;
    }

    private static Optional<float[]> strokes(float[] ink) {
        int dark = 0;
        for (float i : ink) {
            dark += i > INK ? 1 : 0;
        }
        if (dark < LEAST * CELLS || dark > MOST * CELLS) {
            return Optional.empty();
        }
        float[] fine = blurred(ink, STROKE);
        float[] broad = blurred(ink, BROAD);
        double mean = 0;
        for (int i = 0; i < CELLS; i++) {
            fine[i] -= broad[i];
            mean += fine[i] / CELLS;
        }
        for (int i = 0; i < CELLS; i++) {
            fine[i] -= (float) mean;
        }
        return Optional.of(fine);
    }

    private static float[] blurred(float[] field, double spread) {
        return blurred(blurred(field, spread, 1, COLUMNS), spread, COLUMNS, ROWS);
    }

    /** Along one axis; beyond the edge there is nothing. */
    private static float[] blurred(float[] field, double spread, int stride, int count) {
        int reach = (int) Math.ceil(3 * spread);
        double[] weights = new double[2 * reach + 1];
        double all = 0;
        for (int k = -reach; k <= reach; k++) {
            weights[k + reach] = Math.exp(-k * k / (2 * spread * spread));
            all += weights[k + reach];
        }
        float[] out = new float[CELLS];
        for (int i = 0; i < CELLS; i++) {
            int at = Math.floorMod(Math.floorDiv(i, stride), count);
            double sum = 0;
            for (int k = Math.max(-reach, -at); k <= Math.min(reach, count - 1 - at); k++) {
                sum += weights[k + reach] * field[i + k * stride];
            }
            out[i] = (float) (sum / all);
        }
        return out;
    }
}
