package org.tidegate.examination.picture;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/** Turns pictures upright (EXIF 2.32 §4.6.4, tag 0x0112 Orientation). */
final class Orientation {

    private Orientation() {}

    /**
     * @param image of type INT_RGB
     * @param orientation 1–8; anything else counts as 1
     */
    static BufferedImage upright(BufferedImage image, int orientation) {
        if (orientation < 2 || orientation > 8) {
            return image;
        }
        int w = image.getWidth();
        int h = image.getHeight();
        boolean turned = orientation >= 5;
        BufferedImage out = new BufferedImage(turned ? h : w, turned ? w : h, BufferedImage.TYPE_INT_RGB);
        int[] from = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        int[] to = ((DataBufferInt) out.getRaster().getDataBuffer()).getData();
        for (int y = 0; y < out.getHeight(); y++) {
            for (int x = 0; x < out.getWidth(); x++) {
                to[y * out.getWidth() + x] = from[source(x, y, w, h, orientation)];
            }
        }
        return out;
    }

    /** Where a rectangle of the upright picture lies in the stored one of that width and height. */
    static Rectangle stored(Rectangle r, int w, int h, int orientation) {
        int right = w - r.x - r.width;
        int below = h - r.y - r.height;
        return switch (orientation) {
            case 2 -> new Rectangle(right, r.y, r.width, r.height);
            case 3 -> new Rectangle(right, below, r.width, r.height);
            case 4 -> new Rectangle(r.x, below, r.width, r.height);
            case 5 -> new Rectangle(r.y, r.x, r.height, r.width);
            case 6 -> new Rectangle(r.y, h - r.x - r.width, r.height, r.width);
            case 7 -> new Rectangle(w - r.y - r.height, h - r.x - r.width, r.height, r.width);
            case 8 -> new Rectangle(w - r.y - r.height, r.x, r.height, r.width);
            default -> new Rectangle(r);
        };
    }

    /** Index of the stored pixel that is seen at (x, y) of the upright picture; w and h are those of the stored one. */
    private static int source(int x, int y, int w, int h, int orientation) {
        return switch (orientation) {
            case 2 -> y * w + (w - 1 - x);
            case 3 -> (h - 1 - y) * w + (w - 1 - x);
            case 4 -> (h - 1 - y) * w + x;
            case 5 -> x * w + y;
            case 6 -> (h - 1 - x) * w + y;
            case 7 -> (h - 1 - x) * w + (w - 1 - y);
            case 8 -> x * w + (w - 1 - y);
            default -> y * w + x;
        };
    }
}
