package org.tidegate.examination.picture.mrz;

import java.util.ArrayList;
import java.util.List;

/** Which characters a place of a format may hold, and how likely beforehand (ICAO Doc 9303-3 §4.3; -4, -5, -6 and -7 §4.2.2). */
final class Alphabet {

    private static final double SELDOM = 0.02;
    private static final String LETTERS = GlyphSheet.GLYPHS.substring(0, 26);
    private static final String DIGITS = GlyphSheet.GLYPHS.substring(26, 36);

    private Alphabet() {}

    /** For each line, each place, each glyph: its weight; 0 where it cannot stand. */
    static List<double[][]> of(MrzFormat format) {
        Layout layout = Layout.of(format);
        List<double[][]> out = new ArrayList<>();
        for (int line = 0; line < format.lines(); line++) {
            double[][] places = new double[format.length()][];
            for (int i = 0; i < places.length; i++) {
                places[i] = place(format, layout, line, i);
            }
            out.add(places);
        }
        return out;
    }

    private static double[] place(MrzFormat format, Layout layout, int line, int i) {
        if (line == 0 && i == 0) {
            return weights(format.firstLetters(), 1, "", 0);
        }
        if (line == 0 && i == 1 || isIn(line, i, layout.issuer(), layout.names(), layout.nationality())) {
            return weights(LETTERS + "<", 1, "", 0);
        }
        if (isIn(line, i, layout.birth(), layout.expiry())) {
            return weights(DIGITS, 1, "<", SELDOM);
        }
        if (isIn(line, i, layout.sex())) {
            return weights("MF<", 1, "X", SELDOM);
        }
        boolean digit = layout.checks().stream().anyMatch(c -> c.digit().holds(line, i));
        return digit ? weights(DIGITS, 1, "<", SELDOM) : weights(LETTERS + DIGITS + "<", 1, "", 0);
    }

    private static boolean isIn(int line, int i, Span... spans) {
        for (Span span : spans) {
            if (span.holds(line, i)) {
                return true;
            }
        }
        return false;
    }

    private static double[] weights(String usual, double weight, String others, double seldom) {
        double[] out = new double[GlyphSheet.GLYPHS.length()];
        usual.chars().forEach(c -> out[GlyphSheet.GLYPHS.indexOf(c)] = weight);
        others.chars().forEach(c -> out[GlyphSheet.GLYPHS.indexOf(c)] = seldom);
        return out;
    }
}
