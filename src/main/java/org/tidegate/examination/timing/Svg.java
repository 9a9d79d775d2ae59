package org.tidegate.examination.timing;

/** A drawing as SVG 1.1. */
final class Svg {

    /** Of the hatching; pages that show several drawings need one each. */
    private final String pattern;

    private final StringBuilder out = new StringBuilder();

    private Svg(String pattern) {
        this.pattern = pattern;
    }

    /**
     * The elements of a drawing, without the frame of a document.
     *
     * @param name ends its ids
     */
    static String body(Drawing drawing, String name) {
        Svg svg = new Svg("window-" + name);
        svg.out.append("<defs><pattern id=\"" + svg.pattern
                + "\" width=\"7\" height=\"7\" patternUnits=\"userSpaceOnUse\">"
                + "<path d=\"M0 7L7 0\" stroke=\"#aaa\"/></pattern></defs>");
        drawing.marks().forEach(svg::mark);
        return svg.out.toString();
    }

    private void mark(Drawing.Mark mark) {
        if (mark instanceof Drawing.Line l) {
            out.append("<path d=\"M%d %dL%d %d\" %s/>".formatted(l.x1(), l.y1(), l.x2(), l.y2(), look(l.pen())));
        } else if (mark instanceof Drawing.Box b) {
            out.append("<rect x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\" %s/>"
                    .formatted(b.x(), b.y(), b.width(), b.height(), look(b.fill())));
        } else if (mark instanceof Drawing.Words w) {
            words(w);
        }
    }

    private static String look(Drawing.Pen pen) {
        return switch (pen) {
            case PALE -> "stroke=\"#bbb\"";
            case DARK -> "stroke=\"#444\"";
            case LIMIT -> "stroke=\"#000\" stroke-width=\"2\" stroke-dasharray=\"6 4\"";
        };
    }

    private String look(Drawing.Fill fill) {
        return switch (fill) {
            case BLACK -> "fill=\"#000\" stroke=\"#000\"";
            case WHITE -> "fill=\"#fff\" stroke=\"#000\"";
            case HATCHED -> "fill=\"url(#" + pattern + ")\" stroke=\"#444\"";
        };
    }

    /** With a white rim, so that it can be read over anything. */
    private void words(Drawing.Words w) {
        out.append(
                        "<text x=\"%d\" y=\"%d\" font-size=\"%d\"%s paint-order=\"stroke\" stroke=\"#fff\" stroke-width=\"3\">"
                                .formatted(w.x(), w.y(), w.size(), w.bold() ? " font-weight=\"bold\"" : ""))
                .append(escaped(w.text()))
                .append("</text>");
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
