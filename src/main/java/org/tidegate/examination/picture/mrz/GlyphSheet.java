package org.tidegate.examination.picture.mrz;

import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.imageio.ImageIO;

/** The shapes that characters are told by: a picture with a row for each font, made by {@code GlyphSheetWriter} of the test sources. */
final class GlyphSheet {

    /** In the order of the columns. */
    static final String GLYPHS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789<";

    static final int WIDTH = 2 * CellWindow.COLUMNS;
    static final int HEIGHT = 2 * CellWindow.ROWS;

    private GlyphSheet() {}

    /** For each font the shape of each glyph, row-major, {@link #WIDTH} × {@link #HEIGHT}, 0 paper to 1 ink. */
    static List<float[][]> fonts() {
        try (InputStream in = Objects.requireNonNull(
                GlyphSheet.class.getResourceAsStream("/picture/mrz-glyphs.png"), "the glyph sheet is missing")) {
            return fonts(ImageIO.read(in));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<float[][]> fonts(BufferedImage sheet) {
        List<float[][]> fonts = new ArrayList<>();
        for (int row = 0; row < sheet.getHeight() / HEIGHT; row++) {
            float[][] font = new float[GLYPHS.length()][];
            for (int i = 0; i < font.length; i++) {
                font[i] = shape(sheet.getRaster(), i * WIDTH, row * HEIGHT);
            }
            fonts.add(font);
        }
        return fonts;
    }

    private static float[] shape(Raster sheet, int left, int top) {
        float[] out = new float[WIDTH * HEIGHT];
        for (int i = 0; i < out.length; i++) {
            out[i] = sheet.getSample(left + i % WIDTH, top + i / WIDTH, 0) / 255f;
        }
        return out;
    }
}
