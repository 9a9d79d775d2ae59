package org.tidegate.examination.picture;

import java.util.Arrays;
import java.util.List;
import org.tidegate.examination.picture.Regions.Region;

/** An upright piece of something flat, seen against its own main colour: what differs from it, by how much. */
final class Surface {

    private final Pixels pixels;
    private final float[] difference;
    private final float[] green;
    private final Plane[] light;

    private Surface(Pixels pixels) {
        this.pixels = pixels;
        float[] r = pixels.channel(0);
        float[] g = pixels.channel(1);
        float[] b = pixels.channel(2);
        int w = pixels.width();
        int h = pixels.height();
        Plane pr = Plane.fit(r, w, h);
        Plane pg = Plane.fit(g, w, h);
        Plane pb = Plane.fit(b, w, h);
        this.light = new Plane[] {pr, pg, pb};
        this.green = g;
        this.difference = new float[r.length];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int i = y * w + x;
                double u = (x + 0.5) / w;
                double v = (y + 0.5) / h;
                double red = off(r[i], pr.at(u, v));
                double mid = off(g[i], pg.at(u, v));
                double blue = off(b[i], pb.at(u, v));
                difference[i] = (float) Math.max(red, Math.max(mid, blue));
            }
        }
    }

    static Surface of(Quad quad, Pixels image, int width, int height) {
        return of(Homography.toQuad(quad).rectify(image, width, height));
    }

    static Surface of(Pixels straight) {
        return new Surface(straight);
    }

    private static double off(double value, double expected) {
        return Math.abs(value - expected) / Math.max(20, expected);
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
        float[] least = new float[difference.length];
        float[] most = new float[difference.length];
        Arrays.fill(least, 1);
        for (int c = 0; c < light.length; c++) {
            float[] channel = EdgeMap.smooth(pixels.channel(c), w, height());
            for (int i = 0; i < channel.length; i++) {
                double expected = light[c].at((i % w + 0.5) / w, (Math.floorDiv(i, w) + 0.5) / height());
                float drop = (float) (1 - channel[i] / Math.max(20, expected));
                least[i] = Math.min(least[i], drop);
                most[i] = Math.max(most[i], drop);
            }
        }
        for (int i = 0; i < least.length; i++) {
            least[i] = most[i] <= 0 ? 0 : Math.max(0, least[i] / most[i]);
        }
        return least;
    }

    float green(int x, int y) {
        return green[y * width() + x];
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
        float[] r = pixels.channel(0);
        float[] b = pixels.channel(2);
        int n = 0;
        for (int i = 0; i < difference.length; i++) {
            double u = (i % width() + 0.5) / width();
            double v = (Math.floorDiv(i, width()) + 0.5) / height();
            double red = r[i] / Math.max(20, light[0].at(u, v));
            double mid = green[i] / Math.max(20, light[1].at(u, v));
            double blue = b[i] / Math.max(20, light[2].at(u, v));
            double most = Math.max(red, Math.max(mid, blue));
            double least = Math.min(red, Math.min(mid, blue));
            n += least >= darkest && least >= (1 - within) * most ? 1 : 0;
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
