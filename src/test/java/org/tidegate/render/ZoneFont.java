package org.tidegate.render;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/** Outlines of OCR B (test resource {@code render/ocr-b.txt}, which names their source), so that no font need be installed. */
final class ZoneFont {

    private static final Map<Character, Path2D> GLYPHS = read();

    private ZoneFont() {}

    /** The text, its first capital's top left corner at (x, y), of that capital height and so far from letter to letter. */
    static Path2D text(String text, double x, double y, double capital, double pitch) {
        Path2D all = new Path2D.Double();
        for (int i = 0; i < text.length(); i++) {
            AffineTransform place = AffineTransform.getTranslateInstance(x + i * pitch, y + capital);
            place.scale(capital / 1000, capital / 1000);
            all.append(place.createTransformedShape(GLYPHS.get(text.charAt(i))), false);
        }
        return all;
    }

    private static Map<Character, Path2D> read() {
        try (InputStream in = Objects.requireNonNull(ZoneFont.class.getResourceAsStream("/render/ocr-b.txt"))) {
            Map<Character, Path2D> glyphs = new TreeMap<>();
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(l -> !l.startsWith("#"))
                    .forEach(l -> glyphs.put(l.charAt(0), path(l.substring(2).split(" "))));
            return glyphs;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path2D path(String[] words) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < words.length; i++) {
            double[] p = new double[6];
            int n = "MLQCZ".indexOf(words[i]) < 2 ? 2 : words[i].equals("Q") ? 4 : words[i].equals("C") ? 6 : 0;
            for (int k = 0; k < n; k++) {
                p[k] = Double.parseDouble(words[i + 1 + k]);
            }
            switch (words[i]) {
                case "M" -> path.moveTo(p[0], p[1]);
                case "L" -> path.lineTo(p[0], p[1]);
                case "Q" -> path.quadTo(p[0], p[1], p[2], p[3]);
                case "C" -> path.curveTo(p[0], p[1], p[2], p[3], p[4], p[5]);
                default -> path.closePath();
            }
            i += n;
        }
        return path;
    }
}
