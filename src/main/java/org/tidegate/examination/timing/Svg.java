package org.tidegate.examination.timing;

import java.util.ArrayList;
import java.util.List;

/** A few shapes and lines of text as SVG 1.1, black on white. */
final class Svg {

    /** A character of the sans-serif fonts in use is no wider than this part of its size, on the average. */
    private static final double CHARACTER = 0.55;

    private final StringBuilder out = new StringBuilder();

    /** A line of many words comes close to the average. */
    private static final double IN_A_LINE = 0.5;

    static int textWidth(String text, int size) {
        return (int) Math.ceil(text.length() * CHARACTER * size);
    }

    Svg raw(String element) {
        out.append(element);
        return this;
    }

    Svg line(int x1, int y1, int x2, int y2, String look) {
        out.append("<path d=\"M%d %dL%d %d\" %s/>".formatted(x1, y1, x2, y2, look));
        return this;
    }

    Svg box(int x, int y, int width, int height, String look) {
        out.append("<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" %s/>".formatted(x, y, width, height, look));
        return this;
    }

    /** Text with a white rim, so that it can be read over anything. */
    Svg text(int x, int y, int size, boolean bold, String words) {
        out.append(
                        "<text x=\"%d\" y=\"%d\" font-size=\"%d\"%s paint-order=\"stroke\" stroke=\"#fff\" stroke-width=\"3\">"
                                .formatted(x, y, size, bold ? " font-weight=\"bold\"" : ""))
                .append(escaped(words))
                .append("</text>");
        return this;
    }

    /** A label that starts at {@code x} where it fits into {@code width}, else ends there. */
    Svg label(int x, int y, int size, boolean bold, String words, int width) {
        return text(labelStart(x, size, words, width), y, size, bold, words);
    }

    static int labelStart(int x, int size, String words, int width) {
        int wide = textWidth(words, size);
        return x + wide <= width ? x : Math.max(0, Math.min(x, width) - wide);
    }

    /** Lines of at most the width, broken between words. */
    static List<String> wrapped(String text, int size, boolean bold, int width) {
        double wide = (bold ? CHARACTER : IN_A_LINE) * size;
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (!line.isEmpty() && (line.length() + 1 + word.length()) * wide > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
