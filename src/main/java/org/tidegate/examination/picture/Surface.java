package org.tidegate.examination.picture;

import java.util.Arrays;
import java.util.List;
import org.tidegate.examination.picture.Regions.Region;

/** An upright piece of something flat, seen against its own main colour: what differs from it, by how much. */
final class Surface {

    private static final int CHANNELS = 3;

    /** Light below which differences count as if there were so much, 0–255. */
    private static final float DARKEST = 20;

    private final Pixels pixels;
    private final float[] difference;
    private final float[][] channel = new float[CHANNELS][];
    private final Plane[] light;

    private Surface(Pixels pixels) {
        this.pixels = pixels;
        int w = pixels.width();
        int h = pixels.height();
        this.light = new Plane[CHANNELS];
        this.difference = new float[w * h];
        float[] expected = new float[w];
        for (int c = 0; c < CHANNELS; c++) {
            channel[c] = pixels.channel(c);
            light[c] = Plane.fit(channel[c], w, h);
            for (int y = 0; y < h; y++) {
                light[c].row(y, h, expected);
                differ(channel[c], expected, y * w);
            }
        }
    }

    /** Keeps the largest difference of the channels. */
    private void differ(float[] values, float[] expected, int from) {
        for (int x = 0; x < expected.length; x++) {
            float off = Math.abs(values[from + x] - expected[x]) / (expected[x] > DARKEST ? expected[x] : DARKEST);
            difference[from + x] = difference[from + x] > off ? difference[from + x] : off;
        }
    }

    static Surface of(Quad quad, Pixels image, int width, int height) {
        return of(Homography.toQuad(quad).rectify(image, width, height));
    }

    static Surface of(Pixels straight) {
        return new Surface(straight);
    }

    Pixels pixels() {
        return pixels;
    }

    int width() {
        return pixels.width();
    }

    int height() {
        return pixels.height();
    }

    /** Green of the surface's main colour there, 0–255. */
    double lightAt(double x, double y) {
        return light[1].at((x + 0.5) / width(), (y + 0.5) / height());
    }

    /** How light and colourless the main colour is: its weakest channel in the middle, 0–255. */
    double white() {
        return Math.min(light[0].at(0.5, 0.5), Math.min(light[1].at(0.5, 0.5), light[2].at(0.5, 0.5)));
    }

    /** How much alike the three channels are darkened at each place, 0–1: a rim or shadow takes of all of them, a dye mostly of some. */
    float[] neutrality() {
        int w = width();
        int h = height();
        float[] least = new float[w * h];
        float[] most = new float[w * h];
        float[] expected = new float[w];
        Arrays.fill(least, 1);
        for (int c = 0; c < CHANNELS; c++) {
            float[] smooth = EdgeMap.smooth(channel[c], w, h);
            for (int y = 0; y < h; y++) {
                light[c].row(y, h, expected);
                for (int x = 0; x < w; x++) {
                    int i = y * w + x;
                    float drop = 1 - smooth[i] / (expected[x] > DARKEST ? expected[x] : DARKEST);
                    least[i] = least[i] < drop ? least[i] : drop;
                    most[i] = most[i] > drop ? most[i] : drop;
                }
            }
        }
        for (int i = 0; i < least.length; i++) {
            least[i] = most[i] <= 0 || least[i] <= 0 ? 0 : least[i] / most[i];
        }
        return least;
    }

    float green(int x, int y) {
        return channel[1][y * width() + x];
    }

    /** By how much a pixel differs from the main colour (relative), in the channel where it differs most. */
    float difference(int x, int y) {
        return difference[y * width() + x];
    }

    /** Spread of green within a region's box, a tenth of it left away at each side: between the 10th and the 90th percentile, as a share of that. */
    double variety(Region r) {
        int left = r.left() + r.width() / 10;
        int top = r.top() + r.height() / 10;
        int w = Math.max(1, r.width() * 8 / 10);
        int h = Math.max(1, r.height() * 8 / 10);
        float[] values = new float[w * h];
        for (int i = 0; i < values.length; i++) {
            values[i] = green(left + i % w, top + i / w);
        }
        Arrays.sort(values);
        float high = values[values.length * 9 / 10];
        return (high - values[values.length / 10]) / Math.max(1, high);
    }

    /** Share of pixels that differ from the main colour by no more than so much (relative). */
    double plainShare(double within) {
        int n = 0;
        for (float d : difference) {
            n += d <= within ? 1 : 0;
        }
        return (double) n / difference.length;
    }

    /**
     * Share of pixels that have the main colour, whatever light falls on them: all three channels are darker alike by at most so much (relative).
     * The edge of a shadow across a thing leaves it its colour.
     */
    double ownColourShare(double within, double darkest) {
        int w = width();
        float[] expected = new float[w];
        float[] least = new float[w];
        float[] most = new float[w];
        int n = 0;
        for (int y = 0; y < height(); y++) {
            Arrays.fill(least, Float.MAX_VALUE);
            Arrays.fill(most, 0);
            for (int c = 0; c < CHANNELS; c++) {
                light[c].row(y, height(), expected);
                for (int x = 0; x < w; x++) {
                    float share = channel[c][y * w + x] / (expected[x] > DARKEST ? expected[x] : DARKEST);
                    least[x] = least[x] < share ? least[x] : share;
                    most[x] = most[x] > share ? most[x] : share;
                }
            }
            for (int x = 0; x < w; x++) {
                n += least[x] >= darkest && least[x] >= (1 - within) * most[x] ? 1 : 0;
            }
        }
        return (double) n / difference.length;
    }

    /** What differs by more than so much, leaving a margin (share of the height) away. */
    List<Region> features(double moreThan, double margin, int minArea) {
        int edge = (int) Math.round(margin * height());
        boolean[] mask = new boolean[difference.length];
        for (int y = edge; y < height() - edge; y++) {
            for (int x = edge; x < width() - edge; x++) {
                mask[y * width() + x] = difference[y * width() + x] > moreThan;
            }
        }
        return Regions.of(mask, width(), height(), minArea);
    }
}
