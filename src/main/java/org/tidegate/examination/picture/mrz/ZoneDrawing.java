package org.tidegate.examination.picture.mrz;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.tidegate.finding.PictureFinding.Corner;

/** Draws what was read: the zone framed on the picture, its characters in the recogniser's own shapes beneath. */
public final class ZoneDrawing {

    private static final Color FRAME = new Color(0, 120, 200);
    private static final int SURE = 0x101820;
    private static final int OPEN = 0xC03020;

    private ZoneDrawing() {}

    /** Undecided characters are red. */
    public static BufferedImage of(BufferedImage picture, ZoneReading zone) {
        int width = picture.getWidth();
        List<String> lines = zone.text().lines();
        double scale = (double) width / (lines.get(0).length() * GlyphSheet.WIDTH);
        int row = (int) Math.ceil(GlyphSheet.HEIGHT * scale);
        BufferedImage out =
                new BufferedImage(width, picture.getHeight() + row * lines.size(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = out.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, width, out.getHeight());
        g.drawImage(picture, 0, 0, null);
        frame(g, zone.box(), Math.max(2f, width / 400f));
        g.dispose();
        float[][] shapes = GlyphSheet.fonts().get(0);
        for (int line = 0; line < lines.size(); line++) {
            for (int i = 0; i < lines.get(line).length(); i++) {
                float[] shape = shapes[GlyphSheet.GLYPHS.indexOf(lines.get(line).charAt(i))];
                int colour = zone.undecided().contains(new ZoneReading.Undecided(line, i)) ? OPEN : SURE;
                glyph(out, shape, colour, scale, i * GlyphSheet.WIDTH * scale, picture.getHeight() + line * row);
            }
        }
        return out;
    }

    private static void frame(Graphics2D g, List<Corner> box, float width) {
        Path2D path = new Path2D.Double();
        path.moveTo(box.get(0).x(), box.get(0).y());
        box.subList(1, box.size()).forEach(c -> path.lineTo(c.x(), c.y()));
        path.closePath();
        g.setColor(FRAME);
        g.setStroke(new BasicStroke(width));
        g.draw(path);
    }

    private static void glyph(BufferedImage out, float[] shape, int colour, double scale, double left, int top) {
        for (int y = 0; y < (int) (GlyphSheet.HEIGHT * scale); y++) {
            for (int x = (int) left; x < (int) (left + GlyphSheet.WIDTH * scale); x++) {
                int u = (int) ((x + 0.5 - left) / scale);
                int v = (int) ((y + 0.5) / scale);
                boolean inked = u >= 0 && u < GlyphSheet.WIDTH && shape[v * GlyphSheet.WIDTH + u] > 0.5;
                if (inked) {
                    out.setRGB(x, top + y, colour);
                }
            }
        }
    }
}
