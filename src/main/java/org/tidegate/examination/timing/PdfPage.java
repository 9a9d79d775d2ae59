package org.tidegate.examination.timing;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.util.Matrix;

/** A drawing as one A4 page of PDF; the text stays text, so that it can be searched and read aloud. */
final class PdfPage {

    /** Liberation Sans comes with PDFBox: Latin, Greek and Cyrillic letters, the same on every machine. */
    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    /** There is no bold cut of the font at hand: an outline of this part of the size makes it bold. */
    private static final float BOLD = 0.035f;

    /** The part of a line of text that lies above its base line. */
    private static final float ABOVE = 0.8f;

    private static final int HATCH = 7;

    private final PDPageContentStream out;
    private final PDFont font;
    private final CmapLookup glyphs;

    private PdfPage(PDPageContentStream out, PDFont font, CmapLookup glyphs) {
        this.out = out;
        this.font = font;
        this.glyphs = glyphs;
    }

    /**
     * @param width of the drawing where it is {@code page} pixels high
     * @param high how high it is: at least {@code page}; made smaller to fit
     */
    static byte[] of(Drawing drawing, int width, int high, int page, String language, String title) {
        try (PDDocument document = new PDDocument();
                TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(face()))) {
            PDPage sheet = new PDPage(PDRectangle.A4);
            document.addPage(sheet);
            document.getDocumentInformation().setTitle(title);
            document.getDocumentCatalog().setLanguage(language);
            PDViewerPreferences shown = new PDViewerPreferences(new COSDictionary());
            shown.setDisplayDocTitle(true);
            document.getDocumentCatalog().setViewerPreferences(shown);
            PDFont font = PDType0Font.load(document, face, true);
            try (PDPageContentStream out = new PDPageContentStream(document, sheet)) {
                float scale = PDRectangle.A4.getHeight() / high;
                float left = (PDRectangle.A4.getWidth() - width * scale) / 2;
                out.transform(new Matrix(scale, 0, 0, -scale, left, PDRectangle.A4.getHeight()));
                PdfPage target = new PdfPage(out, font, face.getUnicodeCmapLookup());
                for (Drawing.Mark mark : drawing.marks()) {
                    target.draw(mark);
                }
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("The page cannot be written", e);
        }
    }

    private static InputStream face() {
        return Objects.requireNonNull(PDDocument.class.getResourceAsStream(FONT), FONT);
    }

    private void draw(Drawing.Mark mark) throws IOException {
        if (mark instanceof Drawing.Line l) {
            line(l);
        } else if (mark instanceof Drawing.Box b) {
            box(b);
        } else if (mark instanceof Drawing.Words w) {
            words(w);
        }
    }

    private void line(Drawing.Line l) throws IOException {
        out.saveGraphicsState();
        switch (l.pen()) {
            case PALE -> out.setStrokingColor(new Color(0xbbbbbb));
            case DARK -> out.setStrokingColor(new Color(0x444444));
            case LIMIT -> {
                out.setLineWidth(2);
                out.setLineDashPattern(new float[] {6, 4}, 0);
            }
        }
        stroke(l.x1(), l.y1(), l.x2(), l.y2());
        out.restoreGraphicsState();
    }

    private void stroke(float x1, float y1, float x2, float y2) throws IOException {
        out.moveTo(x1, y1);
        out.lineTo(x2, y2);
        out.stroke();
    }

    private void box(Drawing.Box b) throws IOException {
        out.saveGraphicsState();
        switch (b.fill()) {
            case BLACK, WHITE -> {
                out.setNonStrokingColor(b.fill() == Drawing.Fill.BLACK ? Color.BLACK : Color.WHITE);
                out.addRect(b.x(), b.y(), b.width(), b.height());
                out.fillAndStroke();
            }
            case HATCHED -> hatched(b);
        }
        out.restoreGraphicsState();
    }

    private void hatched(Drawing.Box b) throws IOException {
        out.saveGraphicsState();
        out.addRect(b.x(), b.y(), b.width(), b.height());
        out.clip();
        out.setStrokingColor(new Color(0xaaaaaa));
        for (int x = b.x() - b.height(); x < b.x() + b.width(); x += HATCH) {
            stroke(x, b.y() + b.height(), x + b.height(), b.y());
        }
        out.restoreGraphicsState();
        out.setStrokingColor(new Color(0x444444));
        out.addRect(b.x(), b.y(), b.width(), b.height());
        out.stroke();
    }

    /** On white, so that it can be read over anything. */
    private void words(Drawing.Words w) throws IOException {
        String text = shown(w.text());
        out.saveGraphicsState();
        out.setNonStrokingColor(Color.WHITE);
        out.addRect(w.x() - 1f, w.y() - w.size() * ABOVE, width(text, w.size()) + 2, w.size());
        out.fill();
        out.setNonStrokingColor(Color.BLACK);
        out.setLineWidth(w.size() * BOLD);
        out.beginText();
        out.setFont(font, w.size());
        out.setRenderingMode(w.bold() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        out.setTextMatrix(new Matrix(1, 0, 0, -1, w.x(), w.y()));
        out.showText(text);
        out.endText();
        out.restoreGraphicsState();
    }

    private float width(String text, int size) throws IOException {
        return font.getStringWidth(text) / 1000 * size;
    }

    /** A character that the font lacks is shown as a question mark; a server may call itself anything. */
    private String shown(String text) {
        return text.codePoints()
                .map(c -> glyphs.getGlyphId(c) == 0 ? '?' : c)
                .mapToObj(Character::toString)
                .collect(Collectors.joining());
    }
}
