package org.tidegate.render;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** Letters as strokes on a grid 4 wide and 6 high, so that pictures need no installed font. Other characters are left blank. */
final class StrokeFont {

    private static final double ADVANCE = 5.6;

    private static final Map<Character, String> STROKES = strokes(
            "A06 20 46;14 34",
            "B00 06 36 45 44 33 03;33 42 41 30 00",
            "C41 30 10 01 05 16 36 45",
            "D00 06 26 44 42 20 00",
            "E40 00 06 46;03 33",
            "F40 00 06;03 33",
            "G41 30 10 01 05 16 36 45 43 23",
            "H00 06;40 46;03 43",
            "I20 26;10 30;16 36",
            "J30 35 26 16 05",
            "K00 06;40 03 46",
            "L00 06 46",
            "M06 00 23 40 46",
            "N06 00 46 40",
            "O10 01 05 16 36 45 41 30 10",
            "P06 00 30 41 42 33 03",
            "Q10 01 05 16 36 45 41 30 10;24 46",
            "R06 00 30 41 42 33 03;23 46",
            "S41 30 10 01 02 13 33 44 45 36 16 05",
            "T00 40;20 26",
            "U00 05 16 36 45 40",
            "V00 26 40",
            "W00 16 23 36 40",
            "X00 46;40 06",
            "Y00 23 40;23 26",
            "Z00 40 06 46",
            "010 01 05 16 36 45 41 30 10;31 15",
            "111 20 26;16 36",
            "201 10 30 41 42 06 46",
            "301 10 30 41 42 33 44 45 36 16 05;13 33",
            "436 30 04 44",
            "540 00 03 33 44 45 36 16 05",
            "640 20 02 05 16 36 45 44 33 13 04",
            "700 40 16",
            "810 01 02 13 33 44 45 36 16 05 04 13;33 42 41 30 10",
            "906 26 44 41 30 10 01 02 13 33 42",
            "<40 03 46",
            "-03 43",
            ":21 22;24 25",
            ".25 26",
            "/06 40");

    private StrokeFont() {}

    private static Map<Character, String> strokes(String... glyphs) {
        Map<Character, String> map = new TreeMap<>();
        for (String glyph : glyphs) {
            map.put(glyph.charAt(0), glyph.substring(1));
        }
        return map;
    }

    /** Width of a line of text of the given capital height, same unit. */
    static double width(String text, double height) {
        return Math.max(0, text.length() * ADVANCE - 1.6) * height / 6;
    }

    /** The text's strokes, its first capital's top left corner at (x, y). */
    static Path2D print(String text, double x, double y, double height) {
        return write(text, x, y, height, 0, new Random(0));
    }

    /** As by hand: every point is off by up to {@code unsteady} grid units, letters lean and dance. */
    static Path2D write(String text, double x, double y, double height, double unsteady, Random random) {
        Path2D all = new Path2D.Double();
        double unit = height / 6;
        for (int i = 0; i < text.length(); i++) {
            AffineTransform place = AffineTransform.getTranslateInstance(x + i * ADVANCE * unit, y);
            place.shear(-0.4 * unsteady * random.nextDouble(), 0);
            place.translate(0, unit * unsteady * 2 * (random.nextDouble() - 0.5));
            place.scale(unit, unit);
            all.append(place.createTransformedShape(glyph(text.charAt(i), unsteady, random)), false);
        }
        return all;
    }

    private static Path2D glyph(char letter, double unsteady, Random random) {
        Path2D path = new Path2D.Double();
        String strokes = STROKES.getOrDefault(letter, "");
        for (String stroke : strokes.isEmpty() ? new String[0] : strokes.split(";")) {
            boolean first = true;
            for (String point : stroke.split(" ")) {
                double px = point.charAt(0) - '0' + unsteady * (random.nextDouble() - 0.5);
                double py = point.charAt(1) - '0' + unsteady * (random.nextDouble() - 0.5);
                if (first) {
                    path.moveTo(px, py);
                } else {
                    path.lineTo(px, py);
                }
                first = false;
            }
        }
        return path;
    }
}
