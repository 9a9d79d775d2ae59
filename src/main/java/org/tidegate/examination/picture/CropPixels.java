package org.tidegate.examination.picture;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.tidegate.finding.PictureFinding.Corner;

/** Pixels of a crop: laid straight, its corners rounded, as PNG, which adds and loses nothing where a line is faint. */
final class CropPixels {

    /** Radius of the rounded corners as a share of the breadth: cassettes' own are rounder than most outlines. */
    private static final double ROUND = 0.2;

    private CropPixels() {}

    /** The outline's inside laid straight; see-through beyond the picture's rim. */
    static BufferedImage straight(Quad inside, BufferedImage image, int width, int height) {
        BufferedImage out = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        Rectangle bounds = bounds(inside).intersection(new Rectangle(image.getWidth(), image.getHeight()));
        if (bounds.isEmpty()) {
            return out;
        }
        Pixels part = Pixels.of(image.getSubimage(bounds.x, bounds.y, bounds.width, bounds.height));
        Homography map = Homography.toQuad(inside.moved(-bounds.x, -bounds.y));
        Pixels straight = map.rectify(part, width, height);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                Corner from = map.at((x + 0.5) / width, (y + 0.5) / height);
                boolean seen = from.x() >= -0.5
                        && from.x() < part.width() - 0.5
                        && from.y() >= -0.5
                        && from.y() < part.height() - 0.5;
                out.setRGB(x, y, seen ? 0xFF000000 | straight.rgb()[y * width + x] : 0);
            }
        }
        return out;
    }

    private static Rectangle bounds(Quad q) {
        double left = q.corners().stream().mapToDouble(Corner::x).min().orElse(0);
        double top = q.corners().stream().mapToDouble(Corner::y).min().orElse(0);
        double right = q.corners().stream().mapToDouble(Corner::x).max().orElse(0);
        double low = q.corners().stream().mapToDouble(Corner::y).max().orElse(0);
        int x = (int) Math.floor(left) - 1;
        int y = (int) Math.floor(top) - 1;
        return new Rectangle(x, y, (int) Math.ceil(right) + 2 - x, (int) Math.ceil(low) + 2 - y);
    }

    static BufferedImage rounded(BufferedImage crop) {
        double radius = ROUND * crop.getHeight();
        BufferedImage out = new BufferedImage(crop.getWidth(), crop.getHeight(), BufferedImage.TYPE_INT_ARGB);
        for (int y = 0; y < out.getHeight(); y++) {
            for (int x = 0; x < out.getWidth(); x++) {
                double dx = beyond(x + 0.5, radius, out.getWidth());
                double dy = beyond(y + 0.5, radius, out.getHeight());
                out.setRGB(x, y, dx * dx + dy * dy <= radius * radius ? crop.getRGB(x, y) : 0);
            }
        }
        return out;
    }

    /** How far a place lies in the rounded end of a side. */
    private static double beyond(double at, double radius, int length) {
        return Math.max(0, Math.max(radius - at, at - (length - radius)));
    }

    static byte[] png(BufferedImage image) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            // Memory does not fail to be written to.
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
