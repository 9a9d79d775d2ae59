package org.tidegate.examination.picture.mrz;

/**
 * A cell as numbers: how steep its ink rises in each of eight directions, gathered in a coarse grid (directional gradient features, a standard
 * way of character recognition). Thickness and darkness of strokes matter little, their place and direction much.
 */
final class GlyphFeatures {

    static final int DIRECTIONS = 8;
    static final int ACROSS = 4;
    static final int DOWN = 6;
    static final int SIZE = DIRECTIONS * ACROSS * DOWN;

    private GlyphFeatures() {}

    /** Of length one; all zero for an empty cell. */
    static float[] of(CellWindow cell) {
        float[] out = new float[SIZE];
        float[] ink = cell.ink();
        int w = CellWindow.COLUMNS;
        for (int y = 1; y < CellWindow.ROWS - 1; y++) {
            for (int x = 1; x < w - 1; x++) {
                int i = y * w + x;
                float gx = 2 * (ink[i + 1] - ink[i - 1])
                        + ink[i - w + 1]
                        - ink[i - w - 1]
                        + ink[i + w + 1]
                        - ink[i + w - 1];
                float gy = 2 * (ink[i + w] - ink[i - w])
                        + ink[i + w - 1]
                        - ink[i - w - 1]
                        + ink[i + w + 1]
                        - ink[i - w + 1];
                if (gx != 0 || gy != 0) {
                    add(out, gx, gy, (x + 0.5f) / w, (y + 0.5f) / CellWindow.ROWS);
                }
            }
        }
        return compressed(out);
    }

    /** Shares a gradient between the two nearest directions and the four nearest fields of the grid. */
    private static void add(float[] out, float gx, float gy, float u, float v) {
        float ax = Math.abs(gx);
        float ay = Math.abs(gy);
        float length = Math.max(ax, ay) + 0.4f * Math.min(ax, ay);
        float sector = sector(gx, gy);
        int first = (int) sector;
        float second = sector - first;
        float fx = Math.max(0, Math.min(ACROSS - 1.001f, u * ACROSS - 0.5f));
        float fy = Math.max(0, Math.min(DOWN - 1.001f, v * DOWN - 0.5f));
        int column = (int) fx;
        int row = (int) fy;
        int field = row * ACROSS + column;
        float right = fx - column;
        float down = fy - row;
        for (int k = 0; k < 4; k++) {
            float share = ((k & 1) == 0 ? 1 - right : right) * (k < 2 ? 1 - down : down) * length;
            int at = (field + (k & 1) + (k < 2 ? 0 : ACROSS)) * DIRECTIONS;
            out[at + first % DIRECTIONS] += share * (1 - second);
            out[at + (first + 1) % DIRECTIONS] += share * second;
        }
    }

    /** 0 to 8, going round; linear within an octant, which is near enough to the angle. */
    private static float sector(float gx, float gy) {
        float ax = Math.abs(gx);
        float ay = Math.abs(gy);
        float octant = ax >= ay ? ay / ax : 2 - ax / ay;
        float half = gx >= 0 ? octant : 4 - octant;
        return gy >= 0 ? half : 8 - half;
    }

    /** Roots even out strong and weak strokes before the whole is brought to length one. */
    private static float[] compressed(float[] values) {
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            values[i] = (float) Math.sqrt(values[i]);
            sum += values[i] * values[i];
        }
        float scale = sum == 0 ? 0 : (float) (1 / Math.sqrt(sum));
        for (int i = 0; i < values.length; i++) {
            values[i] *= scale;
        }
        return values;
    }
}
