package org.tidegate.thirdhand;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.stream.IntStream;

/** The table and all that lies on it as a height field in cells, with colour and gloss: what light and camera meet. */
final class Relief {

    /** Cells; a thing's print reaches so far beyond its wall, or the wall would show the table's colour. */
    private static final double RIM = 1.6;

    private final Bounds bounds;
    private final double scale;
    private final int width;
    private final int height;
    private final float[] colours;
    private final Grid heights;
    private final byte[] gloss;

    private Relief(Bounds bounds, double scale, Grid heights, float[] colours, byte[] gloss) {
        this.bounds = bounds;
        this.scale = scale;
        this.heights = heights;
        this.width = heights.width();
        this.height = heights.height();
        this.colours = colours;
        this.gloss = gloss;
    }

    /**
     * The bare support.
     *
     * @param scale cells per mm
     */
    static Relief of(Support support, Bounds bounds, double scale) {
        int width = (int) (bounds.width() * scale) + 2;
        int height = (int) (bounds.height() * scale) + 2;
        Relief relief = new Relief(
                bounds, scale, Grid.empty(width, height), new float[3 * width * height], new byte[width * height]);
        IntStream.range(0, height).parallel().forEach(j -> {
            for (int i = 0; i < width; i++) {
                Surface s = support.at(relief.tableX(i), relief.tableY(j));
                relief.set(j * width + i, s.colour(), s.gloss());
                relief.heights.values()[j * width + i] = (float) s.height();
            }
        });
        return relief;
    }

    /** The same with the stairs of upright walls softened; nothing may be put on it after. */
    Relief softened() {
        return new Relief(bounds, scale, heights.blurred(1), colours, gloss);
    }

    double tableX(double i) {
        return bounds.left() + i / scale;
    }

    double tableY(double j) {
        return bounds.top() + j / scale;
    }

    double cellX(double x) {
        return (x - bounds.left()) * scale;
    }

    double cellY(double y) {
        return (y - bounds.top()) * scale;
    }

    double scale() {
        return scale;
    }

    Grid heights() {
        return heights;
    }

    private void set(int k, Rgb colour, double shine) {
        colours[3 * k] = (float) colour.red();
        colours[3 * k + 1] = (float) colour.green();
        colours[3 * k + 2] = (float) colour.blue();
        gloss[k] = (byte) (Curves.clamp(shine, 0, 1) * 255);
    }

    Rgb colour(int i, int j) {
        int k = 3 * (j * width + i);
        return new Rgb(colours[k], colours[k + 1], colours[k + 2]);
    }

    double gloss(int i, int j) {
        return (gloss[j * width + i] & 255) / 255.0;
    }

    /** The highest place below a thing, mm. */
    double under(Placed placed) {
        double highest = 0;
        for (int i = -5; i <= 5; i++) {
            for (int j = -5; j <= 5; j++) {
                Placed.Spot at = placed.world(
                        i / 5.0 * placed.thing().halfLength(),
                        j / 5.0 * placed.thing().halfWidth());
                highest = Math.max(highest, heights.nearest((int) cellX(at.x()), (int) cellY(at.y())));
            }
        }
        return highest;
    }

    /** Puts a thing on, where it is higher than what is there. */
    void put(Placed placed) {
        Bounds b = Bounds.of(placed.corners());
        int left = Math.max(0, (int) cellX(b.left()) - 2);
        int right = Math.min(width - 1, (int) cellX(b.right()) + 3);
        int top = Math.max(0, (int) cellY(b.top()) - 2);
        int bottom = Math.min(height - 1, (int) cellY(b.bottom()) + 3);
        if (right <= left || bottom <= top) {
            return;
        }
        int wide = right - left + 1;
        BufferedImage image = print(placed, left, top, wide, bottom - top + 1);
        int[] print = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        IntStream.rangeClosed(top, bottom).parallel().forEach(j -> {
            for (int i = left; i <= right; i++) {
                put(placed, i, j, print[(j - top) * wide + i - left]);
            }
        });
    }

    private BufferedImage print(Placed placed, int left, int top, int wide, int tall) {
        BufferedImage image = new BufferedImage(wide, tall, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.translate(cellX(placed.x()) - left, cellY(placed.y()) - top);
        g.scale(scale, scale);
        g.rotate(placed.turn());
        placed.thing().paint(g);
        g.dispose();
        return image;
    }

    private void put(Placed placed, int i, int j, int print) {
        Thing thing = placed.thing();
        Placed.Spot at = placed.local(new Placed.Spot(tableX(i), tableY(j)));
        double rim = RIM / scale;
        if (Math.abs(at.x()) > thing.halfLength() + rim || Math.abs(at.y()) > thing.halfWidth() + rim) {
            return;
        }
        double own = thing.height(at.x(), at.y());
        boolean beside = Double.isNaN(own);
        if (beside) {
            own = thing.height(at.x() - Math.signum(at.x()) * rim, at.y() - Math.signum(at.y()) * rim);
        }
        int k = j * width + i;
        double z = own + placed.rise(at.x());
        if (Double.isNaN(z) || z < heights.values()[k]) {
            return;
        }
        Rgb painted = colour(i, j).mix(Rgb.ofCode(print), (print >>> 24) / 255.0);
        set(k, thing.finish(at.x(), at.y(), painted), thing.gloss(at.x(), at.y()));
        if (!beside) {
            heights.values()[k] = (float) z;
        }
    }
}
