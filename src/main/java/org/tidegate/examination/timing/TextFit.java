package org.tidegate.examination.timing;

import java.util.ArrayList;
import java.util.List;

/** How much room words take, in any of the sans-serif fonts in use: an estimate on the wide side. */
final class TextFit {

    /** A character is no wider than this part of its size, on the average. */
    private static final double CHARACTER = 0.55;

    /** A line of many words comes close to the average. */
    private static final double IN_A_LINE = 0.5;

    private TextFit() {}

    static int width(String text, int size) {
        return (int) Math.ceil(text.length() * CHARACTER * size);
    }

    /** Where a label starts that is to stand at {@code x} and to stay within the width. */
    static int start(int x, int size, String words, int width) {
        int wide = width(words, size);
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
}
