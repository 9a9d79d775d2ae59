package org.tidegate.examination.picture;

import java.awt.Rectangle;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.finding.PictureFinding.Corner;
import org.tidegate.finding.PictureFinding.Legibility;
import org.tidegate.rules.PictureRules;

/** Measures whether a person could read the picture: where the cassette lies if one was found, else over the whole of it. */
public final class LegibilityMeter {

    /** Longer side on which sharpness is measured, so that it does not grow with the camera's pixels. */
    private static final int SIDE = 800;

    private static final int REACH = 12;

    /** Below this an edge may be wider than the reach, and is measured again over a wider one. */
    private static final double BLURRED = 0.1;

    private static final int FAR = 28;
    private static final int BURNT = 250;

    /** Share of the steepest places that count as its edges. */
    private static final double EDGES = 0.004;

    private LegibilityMeter() {}

    /**
     * Where a line stands out of its membrane, the window is not burnt out, however bright the body is.
     *
     * @param image upright, at most about 1,600 pixels on its longer side
     * @return sharpness is the steepest part of an edge as a share of its whole contrast, a pixel of a picture of 800 pixels: 0.5 for an ideal edge
     */
    public static Legibility measure(BufferedImage image, List<CassetteFinding> cassettes, PictureRules rules) {
        return measure(Pixels.of(image), cassettes, rules);
    }

    static Legibility measure(Pixels image, List<CassetteFinding> cassettes, PictureRules rules) {
        Pixels small = image.shrunkTo(SIDE);
        float[] green = small.channel(1);
        Rectangle within = within(image, small, cassettes);
        double sharpness = sharpness(green, small.width(), within, REACH);
        if (sharpness < BLURRED) {
            float[] calm =
                    EdgeMap.smooth(EdgeMap.smooth(green, small.width(), small.height()), small.width(), small.height());
            sharpness = Math.min(sharpness, sharpness(calm, small.width(), within, FAR));
        }
        Pixels place = cassettes.isEmpty() ? small : cassette(image, cassettes.get(0));
        double brightness = mean(place.channel(1)) / 255;
        double clipped = burnt(place);
        List<String> why = new ArrayList<>();
        if (sharpness < rules.minSharpness()) {
            why.add("blur");
        }
        if (brightness < rules.minBrightness()) {
            why.add("dark");
        }
        boolean lineSeen = !cassettes.isEmpty()
                && cassettes.get(0).lines().values().stream().anyMatch(PictureFinding.Line::present);
        if (brightness > rules.maxBrightness() && !lineSeen) {
            why.add("bright");
        }
        if (clipped > rules.maxClipped() && !lineSeen) {
            why.add("glare");
        }
        if (Math.min(image.width(), image.height()) < rules.minSide()) {
            why.add("small");
        }
        return new Legibility(sharpness, brightness, clipped, why.isEmpty(), why);
    }

    private static Pixels cassette(Pixels image, CassetteFinding cassette) {
        List<Corner> k = cassette.box();
        return Homography.toQuad(new Quad(k.get(0), k.get(1), k.get(2), k.get(3)))
                .rectify(image, 300, 100);
    }

    private static double mean(float[] plane) {
        double sum = 0;
        for (float v : plane) {
            sum += v;
        }
        return sum / plane.length;
    }

    private static double burnt(Pixels place) {
        int n = 0;
        for (int p : place.rgb()) {
            n += ((p >> 16) & 255) >= BURNT && ((p >> 8) & 255) >= BURNT && (p & 255) >= BURNT ? 1 : 0;
        }
        return (double) n / place.rgb().length;
    }

    /** The cassette's place in the small picture, for a sharp table beside it helps nobody; the whole picture where none was found. */
    private static Rectangle within(Pixels image, Pixels small, List<CassetteFinding> cassettes) {
        Rectangle all = new Rectangle(small.width(), small.height());
        all.grow(-FAR, -FAR);
        if (cassettes.isEmpty()) {
            return all;
        }
        double scale = image.scaleOver(small);
        Path2D outline = new Path2D.Double();
        outline.moveTo(
                cassettes.get(0).box().get(0).x() / scale,
                cassettes.get(0).box().get(0).y() / scale);
        cassettes.get(0).box().forEach(k -> outline.lineTo(k.x() / scale, k.y() / scale));
        return outline.getBounds().intersection(all);
    }

    /** Median over the steepest places. */
    private static double sharpness(float[] green, int w, Rectangle within, int reach) {
        float[] slope = slopes(green, w);
        float[] sorted = inside(slope, w, within);
        if (sorted.length == 0) {
            return 0;
        }
        Arrays.sort(sorted);
        float steep = sorted[(int) (sorted.length * (1 - EDGES))];
        double[] shares = new double[sorted.length];
        int n = 0;
        for (int y = within.y; y < within.y + within.height; y++) {
            for (int x = within.x; x < within.x + within.width; x++) {
                if (slope[y * w + x] >= steep && slope[y * w + x] > 0) {
                    shares[n++] = slope[y * w + x] / range(green, w, x, y, reach);
                }
            }
        }
        Arrays.sort(shares, 0, n);
        return n == 0 ? 0 : shares[n / 2];
    }

    private static float[] inside(float[] values, int w, Rectangle within) {
        float[] part = new float[Math.max(0, within.width) * Math.max(0, within.height)];
        for (int y = 0; part.length > 0 && y < within.height; y++) {
            System.arraycopy(values, (within.y + y) * w + within.x, part, y * within.width, within.width);
        }
        return part;
    }

    private static float[] slopes(float[] green, int w) {
        float[] slope = new float[green.length];
        for (int y = 1; y < green.length / w - 1; y++) {
            for (int i = y * w + 1; i < y * w + w - 1; i++) {
                slope[i] = (float) Math.hypot(green[i + 1] - green[i - 1], green[i + w] - green[i - w]) / 2;
            }
        }
        return slope;
    }

    private static float range(float[] green, int w, int x, int y, int reach) {
        float low = Float.MAX_VALUE;
        float high = 1;
        for (int j = y - reach; j <= y + reach; j += 2) {
            for (int i = j * w + x - reach; i <= j * w + x + reach; i += 2) {
                low = Math.min(low, green[i]);
                high = Math.max(high, green[i]);
            }
        }
        return Math.max(1, high - low);
    }
}
