package org.tidegate.examination.picture.mrz;

import java.awt.Rectangle;
import org.tidegate.examination.picture.FinePicture;
import org.tidegate.examination.picture.Luma;
import org.tidegate.finding.PictureFinding.Corner;

/**
 * The surroundings of a line of text, turned level and brought to one size of letters.
 *
 * @param luma its pixels; the line runs through the middle
 * @param place the line in the working picture
 * @param scale pixels of the patch for one of the working picture
 */
record Patch(Luma luma, Strand place, double scale) {

    /** Height of a capital in pixels, as far as the place tells. */
    static final double CAPITAL = 26;

    /** Room before and after the line in heights of it, for what was not seen of it. */
    private static final double BESIDE = 4;

    /** Room above and below: two more lines on either side. */
    private static final double ABOVE = 7;

    private static final int MOST_WIDE = 2200;

    static Patch of(FinePicture picture, Strand place) {
        double scale = Math.min(CAPITAL / place.height(), MOST_WIDE / (place.length() + 2 * BESIDE * place.height()));
        int width = (int) ((place.length() + 2 * BESIDE * place.height()) * scale);
        int height = (int) (2 * ABOVE * place.height() * scale);
        Patch empty = new Patch(new Luma(width, height, new float[0]), place, scale);
        FinePicture.Part part = picture.part(empty.bounds(), scale);
        return new Patch(new Luma(width, height, empty.drawn(part)), place, scale);
    }

    private float[] drawn(FinePicture.Part part) {
        int width = luma.width();
        float[] at = new float[width * luma.height()];
        Corner origin = part.at(onPicture(0, 0));
        double dx = Math.cos(place.angle()) * part.scale() / scale;
        double dy = Math.sin(place.angle()) * part.scale() / scale;
        boolean fine = part.scale() > 1.4 * scale;
        for (int y = 0; y < luma.height(); y++) {
            double px = origin.x() - y * dy;
            double py = origin.y() + y * dx;
            for (int x = 0; x < width; x++) {
                at[y * width + x] =
                        fine ? mean(part.luma(), px, py, dx, dy) : part.luma().sample(px, py);
                px += dx;
                py += dy;
            }
        }
        return at;
    }

    /** Of four samples, where the picture is finer than the patch. */
    private static float mean(Luma from, double x, double y, double dx, double dy) {
        double u = (dx + dy) / 4;
        double v = (dx - dy) / 4;
        return (from.sample(x + u, y - v)
                        + from.sample(x - u, y + v)
                        + from.sample(x + v, y + u)
                        + from.sample(x - v, y - u))
                / 4;
    }

    /** Where a pixel of the patch lies in the working picture. */
    Corner onPicture(double x, double y) {
        double along = (x - (luma.width() - 1) / 2.0) / scale;
        double across = (y - (luma.height() - 1) / 2.0) / scale;
        double cos = Math.cos(place.angle());
        double sin = Math.sin(place.angle());
        return new Corner(place.x() + along * cos - across * sin, place.y() + along * sin + across * cos);
    }

    private Rectangle bounds() {
        Rectangle all = new Rectangle(-1, -1);
        for (int i = 0; i < 4; i++) {
            Corner p = onPicture((i & 1) * luma.width(), (i >> 1) * luma.height());
            all.add(p.x(), p.y());
        }
        all.grow(2, 2);
        return all;
    }
}
