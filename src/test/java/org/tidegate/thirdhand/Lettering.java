package org.tidegate.thirdhand;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;

/** Text as outlines, so that it can be as small as print is. */
enum Lettering {
    PLAIN("DejaVu Sans", Font.PLAIN),
    BOLD("DejaVu Sans", Font.BOLD),
    NARROW("DejaVu Sans Condensed", Font.PLAIN),
    SERIF("DejaVu Serif", Font.PLAIN),
    SERIF_BOLD("DejaVu Serif", Font.BOLD),
    MONO("DejaVu Sans Mono", Font.PLAIN),
    MONO_BOLD("DejaVu Sans Mono", Font.BOLD);

    private static final int OUTLINE_SIZE = 100;
    private static final FontRenderContext UNHINTED = new FontRenderContext(null, true, true);

    private final String family;
    private final int style;

    Lettering(String family, int style) {
        this.family = family;
        this.style = style;
    }

    /**
     * Writes on the baseline from x, y.
     *
     * @param size of the font, mm
     */
    void write(Graphics2D g, String text, double size, double x, double y) {
        write(g, text, x, y, size / OUTLINE_SIZE, size / OUTLINE_SIZE);
    }

    /** Writes squeezed or stretched to a width, mm. */
    void fit(Graphics2D g, String text, double size, double x, double y, double width) {
        double natural = font().getStringBounds(text, UNHINTED).getWidth();
        write(g, text, x, y, width / natural, size / OUTLINE_SIZE);
    }

    private Font font() {
        return new Font(family, style, OUTLINE_SIZE);
    }

    private void write(Graphics2D g, String text, double x, double y, double scaleX, double scaleY) {
        Shape outline = font().createGlyphVector(UNHINTED, text).getOutline();
        AffineTransform place = AffineTransform.getTranslateInstance(x, y);
        place.scale(scaleX, scaleY);
        g.fill(place.createTransformedShape(outline));
    }
}
