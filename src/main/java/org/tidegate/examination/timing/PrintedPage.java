package org.tidegate.examination.timing;

/** One A4 page of headings, lines of text and a drawing, from top to bottom, black on white. */
final class PrintedPage {

    /** A4 at 96 dots an inch. */
    private static final int WIDTH = 794;

    private static final int HEIGHT = 1120;
    private static final int LEFT = 60;
    private static final int BOTTOM = 30;

    /** Room for the mark before a line. */
    private static final int INDENT = 20;

    static final int LINE = WIDTH - 2 * LEFT;

    private final Drawing page = new Drawing();
    private final int size;
    private int used = 58;

    /** @param size of the text, in pixels */
    PrintedPage(int size) {
        this.size = size;
    }

    void title(String text) {
        page.text(LEFT, used, 22, true, text);
        used += 8;
    }

    void heading(String text) {
        used += size + 12;
        page.text(LEFT, used, size + 2, true, text);
        used += 2;
    }

    void paragraph(String text) {
        lines(text, 0, false);
    }

    void strong(String text) {
        lines(text, 0, true);
    }

    /** A line with a mark before it: full or hollow. */
    void marked(boolean full, String text) {
        page.text(LEFT, used + step(), size, false, full ? "●" : "○");
        lines(text, INDENT, false);
    }

    void gap() {
        used += step() / 2;
    }

    /** Leaves room for what is drawn, whose own corner is the origin. */
    void drawn(Drawing drawing, int height) {
        used += step();
        page.add(drawing, LEFT, used);
        used += height;
    }

    private void lines(String text, int indent, boolean bold) {
        for (String line : TextFit.wrapped(text, size, bold, LINE - indent)) {
            used += step();
            page.text(LEFT + indent, used, size, bold, line);
        }
    }

    private int step() {
        return size + size / 3;
    }

    boolean fits() {
        return used + BOTTOM <= HEIGHT;
    }

    /** What is longer than a page is made smaller: this high, in pixels. */
    private int high() {
        return Math.max(HEIGHT, used + BOTTOM);
    }

    /** The page as an SVG document. */
    String svg(String language, String title) {
        int high = high();
        int wide = WIDTH * high / HEIGHT;
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" xml:lang=\"%s\" viewBox=\"%d 0 %d %d\" width=\"%d\" height=\"%d\""
                        .formatted(language, (WIDTH - wide) / 2, wide, high, WIDTH, HEIGHT)
                + " font-family=\"sans-serif\"><title>" + Svg.escaped(title) + "</title>"
                + "<style>@page{size:A4;margin:0}</style><rect x=\"-50%\" width=\"200%\" height=\"100%\" fill=\"#fff\"/>"
                + Svg.body(page, "page") + "</svg>\n";
    }

    /** The page as a PDF document. */
    byte[] pdf(String language, String title) {
        return PdfPage.of(page, WIDTH, high(), HEIGHT, language, title);
    }
}
