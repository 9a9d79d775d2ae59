package org.tidegate.examination.picture;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import org.tidegate.finding.PictureFinding.Corner;

/**
 * A picture at the size that everything is measured on, with its finer pixels at hand where it has them.
 *
 * @param working upright, at most about 1,600 pixels on its longer side
 * @param stored the same as it stands in the file, as fine as it was decoded
 * @param orientation how the stored one is turned, EXIF 2.32 tag 0x0112
 */
public record FinePicture(BufferedImage working, BufferedImage stored, int orientation) {

    /**
     * A finer part.
     *
     * @param left place of its corner in pixels of the working picture
     * @param scale its pixels for one of the working picture
     */
    public record Part(Luma luma, double left, double top, double scale) {

        /** Where a place of the working picture lies in it. */
        public Corner at(Corner place) {
            return new Corner((place.x() + 0.5 - left) * scale - 0.5, (place.y() + 0.5 - top) * scale - 0.5);
        }
    }

    /** Without finer pixels. */
    public static FinePicture of(BufferedImage upright) {
        return new FinePicture(upright, upright, 1);
    }

    /**
     * @param box in pixels of the working picture; what lies outside is cut off
     * @param finest no finer than so many pixels for one of the working picture need be given
     */
    public Part part(Rectangle box, double finest) {
        double scale = (double) Math.max(stored.getWidth(), stored.getHeight())
                / Math.max(working.getWidth(), working.getHeight());
        Rectangle inside = box.intersection(new Rectangle(working.getWidth(), working.getHeight()));
        Rectangle fine = new Rectangle(
                (int) (inside.x * scale),
                (int) (inside.y * scale),
                Math.max(1, (int) (inside.width * scale)),
                Math.max(1, (int) (inside.height * scale)));
        Rectangle cut = Orientation.stored(fine, stored.getWidth(), stored.getHeight(), orientation)
                .intersection(new Rectangle(stored.getWidth(), stored.getHeight()));
        Luma luma = Luma.of(Orientation.upright(copy(cut), orientation));
        double left = fine.x / scale;
        double top = fine.y / scale;
        while (scale / 2 >= finest) {
            luma = luma.halved();
            scale /= 2;
        }
        return new Part(luma, left, top, scale);
    }

    private BufferedImage copy(Rectangle cut) {
        BufferedImage out = new BufferedImage(cut.width, cut.height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = out.createGraphics();
        g.drawImage(stored.getSubimage(cut.x, cut.y, cut.width, cut.height), 0, 0, null);
        g.dispose();
        return out;
    }
}
