package org.tidegate.otherhand;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;

/** Print and handwriting, sized in millimetres. */
final class Lettering {

    static final Font PLAIN = new Font("Liberation Sans", Font.PLAIN, 100);
    static final Font BOLD = new Font("Liberation Sans", Font.BOLD, 100);
    static final Font NARROW = new Font("Liberation Sans Narrow", Font.PLAIN, 100);
    static final Font SERIF = new Font("C059", Font.PLAIN, 100);
    static final Font MACHINE = new Font("Liberation Mono", Font.BOLD, 100);
    private static final Font SCRIPT = new Font("Z003", Font.PLAIN, 100);
    private static final Font UPRIGHT = new Font("URW Gothic", Font.PLAIN, 100);
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    private static final String[] WORDS = {
        "the", "sample", "of", "into", "drops", "wait", "minutes", "and", "a", "line", "result", "do", "not", "read",
        "after", "store", "between", "2", "30", "buffer", "bottle", "with", "swab", "turn", "five", "times", "in",
        "each", "hands", "wash", "before", "open", "pouch", "flat", "surface", "only", "for", "use", "see", "section",
        "4.", "if", "no"
    };

    private Lettering() {}

    static void hints(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    }

    /** Text from (x, y) of the base line, capitals {@code tall} high. */
    static void left(Graphics2D g, String text, double x, double y, double tall, Font font) {
        g.fill(AffineTransform.getTranslateInstance(x, y).createTransformedShape(shape(text, tall, font)));
    }

    /** Text round (x, y), turned. */
    static void centred(Graphics2D g, String text, double x, double y, double tall, Font font, double angle) {
        Shape shape = shape(text, tall, font);
        AffineTransform at = AffineTransform.getTranslateInstance(x, y);
        at.rotate(angle);
        at.translate(-shape.getBounds2D().getCenterX(), -shape.getBounds2D().getCenterY());
        g.fill(at.createTransformedShape(shape));
    }

    /** A line of the machine-readable zone, spread over {@code wide}. */
    static void spread(Graphics2D g, String text, double x, double y, double wide, double tall) {
        double step = wide / text.length();
        for (int i = 0; i < text.length(); i++) {
            centredOnLine(g, text.substring(i, i + 1), x + (i + 0.5) * step, y, tall);
        }
    }

    private static void centredOnLine(Graphics2D g, String letter, double x, double y, double tall) {
        Shape shape = shape(letter, tall, MACHINE);
        double middle = shape.getBounds2D().getCenterX();
        g.fill(AffineTransform.getTranslateInstance(x - middle, y).createTransformedShape(shape));
    }

    /** Somebody's pen: every letter a little off the line, the size and the slope. */
    static void hand(Graphics2D g, String text, double x, double y, double tall, double angle, Draw draw) {
        Font font = draw.oneOf(SCRIPT, UPRIGHT, UPRIGHT);
        Graphics2D pen = (Graphics2D) g.create();
        pen.setColor(draw.colour(20, 0x1c2660, 0x18181c, 0x14388a, 0x1a1a20));
        pen.setStroke(new BasicStroke((float) draw.between(0.1, 0.35)));
        pen.rotate(angle, x, y);
        pen.translate(x - text.length() * tall * 0.42, y + tall / 2);
        double slope = draw.bell(-0.15, 0.15);
        for (int i = 0; i < text.length(); i++) {
            Shape shape = shape(text.substring(i, i + 1), tall * draw.between(0.85, 1.15), font);
            AffineTransform at = AffineTransform.getTranslateInstance(0, draw.bell(0, tall * 0.06));
            at.shear(slope, 0);
            at.rotate(draw.bell(0, 0.07));
            pen.fill(at.createTransformedShape(shape));
            pen.draw(at.createTransformedShape(shape));
            pen.translate(Math.max(shape.getBounds2D().getWidth() + tall * 0.2, tall * 0.45), 0);
        }
        pen.dispose();
    }

    /** Rows of small print, cut at the column's end. */
    static void column(Graphics2D g, double x, double y, double wide, double high, double row, Color ink, Draw draw) {
        Graphics2D own = (Graphics2D) g.create();
        own.clip(new Rectangle2D.Double(x, y - row, wide, high + row));
        own.setColor(ink);
        own.setFont(PLAIN.deriveFont((float) (row * 0.72)));
        own.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        for (double line = y; line < y + high; line += row) {
            if (!draw.chance(0.08)) {
                own.drawString(words(draw.chance(0.15) ? wide * 0.6 : wide, row, draw), (float) x, (float) line);
            }
        }
        own.dispose();
    }

    private static String words(double wide, double row, Draw draw) {
        StringBuilder line = new StringBuilder();
        while (line.length() * row * 0.34 < wide) {
            line.append(draw.oneOf(WORDS)).append(' ');
        }
        return line.toString();
    }

    private static Shape shape(String text, double tall, Font font) {
        double scale = tall / 70;
        return AffineTransform.getScaleInstance(scale, scale)
                .createTransformedShape(font.createGlyphVector(CONTEXT, text).getOutline());
    }
}
