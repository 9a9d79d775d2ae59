package org.tidegate.examination.picture;

/** How steeply the colour changes at each pixel: the largest of the channels' central differences after a 3 × 3 mean. */
final class EdgeMap {

    private EdgeMap() {}

    /** Row-major; 0 at the border. */
    static float[] of(Pixels image) {
        float[] steepest = new float[image.rgb().length];
        for (int c = 0; c < 3; c++) {
            float[] plane = smooth(image.channel(c), image.width(), image.height());
            steepen(steepest, plane, image.width(), image.height());
        }
        return steepest;
    }

    private static void steepen(float[] steepest, float[] plane, int w, int h) {
        for (int y = 1; y < h - 1; y++) {
            for (int i = y * w + 1; i < y * w + w - 1; i++) {
                float dx = Math.abs(plane[i + 1] - plane[i - 1]);
                float dy = Math.abs(plane[i + w] - plane[i - w]);
                steepest[i] = Math.max(steepest[i], Math.max(dx, dy) + 0.4f * Math.min(dx, dy));
            }
        }
    }

    static float[] smooth(float[] plane, int w, int h) {
        float[] rows = new float[plane.length];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int i = y * w + x;
                rows[i] = plane[x == 0 ? i : i - 1] + plane[i] + plane[x == w - 1 ? i : i + 1];
            }
        }
        float[] out = new float[plane.length];
        for (int y = 0; y < h; y++) {
            int up = y == 0 ? 0 : w;
            int down = y == h - 1 ? 0 : w;
            for (int i = y * w; i < y * w + w; i++) {
                out[i] = (rows[i - up] + rows[i] + rows[i + down]) / 9;
            }
        }
        return out;
    }
}
