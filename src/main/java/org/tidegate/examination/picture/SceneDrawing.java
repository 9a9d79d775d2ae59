package org.tidegate.examination.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.tidegate.finding.PictureFinding;
import org.tidegate.finding.PictureFinding.CassetteFinding;
import org.tidegate.finding.PictureFinding.Corner;
import org.tidegate.rules.PictureRules;

/** Draws what was found over the picture: outlines of cassettes, of the identity document, its portrait and its zone. */
public final class SceneDrawing {

    private static final Color CASSETTE = new Color(0xD4, 0x2A, 0x8C);
    private static final Color DOCUMENT = new Color(0x1F, 0x9D, 0x55);

    private SceneDrawing() {}

    /**
     * @param content bytes of the picture's file
     * @return the picture as it was looked at, upright and at most about 1,600 pixels long; empty where its pixels cannot be decoded here
     */
    public static Optional<BufferedImage> of(byte[] content, PictureFinding finding, PictureRules rules) {
        return new PictureDecoder(rules.maxPixels())
                .decode(
                        content,
                        PictureFormat.of(content),
                        FileFactsReader.read(content).orientation())
                .image()
                .map(image -> drawn(image, finding));
    }

    private static BufferedImage drawn(BufferedImage image, PictureFinding finding) {
        BufferedImage out = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = out.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.drawImage(image, 0, 0, null);
        double scale = (double) image.getWidth() / Math.max(1, finding.width());
        g.scale(scale, scale);
        g.setStroke(new BasicStroke((float) (Math.max(2, image.getWidth() / 300) / scale)));
        for (CassetteFinding cassette : finding.cassettes()) {
            outline(g, cassette.box(), CASSETTE);
        }
        outline(g, finding.document().box(), DOCUMENT);
        outline(g, finding.document().portrait(), DOCUMENT);
        outline(g, finding.document().zone(), DOCUMENT);
        g.dispose();
        return out;
    }

    private static void outline(Graphics2D g, List<Corner> corners, Color colour) {
        if (corners.isEmpty()) {
            return;
        }
        Path2D path = new Path2D.Double();
        path.moveTo(corners.get(0).x(), corners.get(0).y());
        corners.forEach(c -> path.lineTo(c.x(), c.y()));
        path.closePath();
        g.setColor(colour);
        g.draw(path);
    }
}
