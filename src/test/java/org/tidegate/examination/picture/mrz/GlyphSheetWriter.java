package org.tidegate.examination.picture.mrz;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/**
 * Draws the recogniser's glyph shapes, a row a font, once: {@code GlyphSheetWriter OUT.png FONT…}. The committed sheet shows OCR B Regular and
 * OCR B Sharp of Debian's fonts-ocr-b 0.3~dfsg1-1 (Norbert Schwarz, Matthew Skala: "may freely use, modify and/or distribute") and DejaVu Sans
 * Mono of fonts-dejavu-mono 2.37 (Bitstream Vera licence).
 */
final class GlyphSheetWriter {

    private GlyphSheetWriter() {}

    public static void main(String[] args) throws IOException, FontFormatException {
        int rows = args.length - 1;
        String all = GlyphSheet.GLYPHS;
        BufferedImage sheet = new BufferedImage(
                all.length() * GlyphSheet.WIDTH, rows * GlyphSheet.HEIGHT, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = sheet.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(Color.WHITE);
        for (int row = 0; row < rows; row++) {
            Font font =
                    Font.createFont(Font.TRUETYPE_FONT, Path.of(args[row + 1]).toFile());
            for (int i = 0; i < all.length(); i++) {
                g.setClip(i * GlyphSheet.WIDTH, row * GlyphSheet.HEIGHT, GlyphSheet.WIDTH, GlyphSheet.HEIGHT);
                g.fill(glyph(font.deriveFont(1000f), all.charAt(i), i, row));
            }
        }
        g.dispose();
        ImageIO.write(sheet, "png", Path.of(args[0]).toFile());
    }

    /** The advance and the height of H fill their shares of the cell; H stands in the middle of its height. */
    private static Shape glyph(Font font, char c, int column, int row) {
        FontRenderContext exact = new FontRenderContext(null, true, true);
        double advance = font.createGlyphVector(exact, "H").getGlyphMetrics(0).getAdvance();
        Rectangle2D capital = outline(font, exact, 'H').getBounds2D();
        double sx = GlyphSheet.WIDTH / CellWindow.PITCHES / advance;
        double sy = GlyphSheet.HEIGHT / CellWindow.CAPITALS / capital.getHeight();
        AffineTransform place = AffineTransform.getTranslateInstance(
                (column + 0.5) * GlyphSheet.WIDTH - sx * advance / 2,
                (row + 0.5) * GlyphSheet.HEIGHT - sy * capital.getCenterY());
        place.scale(sx, sy);
        return place.createTransformedShape(outline(font, exact, c));
    }

    private static Shape outline(Font font, FontRenderContext exact, char c) {
        return font.createGlyphVector(exact, String.valueOf(c)).getOutline();
    }
}
