package org.tidegate.thirdhand;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** What is on prints besides type: handwriting, codes, bars. */
final class Marks {

    private Marks() {}

    /** Loose handwriting of connected loops, along x from the baseline. */
    static void scrawl(Graphics2D g, Draws draws, double x, double y, double width, double size, double thick) {
        g.setStroke(stroke(thick));
        double slant = draws.between(0.1, 0.4);
        double at = x;
        while (at < x + width) {
            Path2D word = new Path2D.Double();
            word.moveTo(at, y);
            int letters = 3 + draws.below(5);
            for (int i = 0; i < letters; i++) {
                at = loop(word, draws, at, y, size, slant);
            }
            g.draw(word);
            at += size * draws.between(0.3, 0.7);
        }
    }

    private static double loop(Path2D word, Draws draws, double x, double y, double size, double slant) {
        double tall = size * (draws.chance(0.25) ? draws.between(0.8, 1.2) : draws.between(0.35, 0.6));
        double wide = size * draws.between(0.3, 0.5);
        word.curveTo(
                x + tall * slant,
                y - tall,
                x + wide * 0.5 + tall * slant,
                y - tall * draws.between(0.7, 1.1),
                x + wide * 0.6,
                y - tall * 0.3);
        word.curveTo(
                x + wide * 0.6,
                y + size * draws.between(-0.05, 0.1),
                x + wide * 0.8,
                y + size * 0.05,
                x + wide,
                y - size * draws.between(0, 0.15));
        return x + wide;
    }

    static BasicStroke stroke(double width) {
        return new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    static BasicStroke line(double width) {
        return new BasicStroke((float) width);
    }

    /** A square code with three finders, as ISO/IEC 18004 places them; the rest says nothing. */
    static void matrix(Graphics2D g, Draws draws, double x, double y, double size, int modules) {
        double module = size / modules;
        g.setColor(Color.WHITE);
        g.fill(new Rectangle2D.Double(x - module, y - module, size + 2 * module, size + 2 * module));
        g.setColor(new Color(25, 25, 25));
        for (int j = 0; j < modules; j++) {
            for (int i = 0; i < modules; i++) {
                if (finder(i, j, modules) ? finderDark(i, j, modules) : draws.coin()) {
                    // a hair wider, or light shows between neighbours
                    g.fill(new Rectangle2D.Double(x + i * module, y + j * module, module * 1.02, module * 1.02));
                }
            }
        }
    }

    private static boolean finder(int i, int j, int modules) {
        boolean last = i >= modules - 8 && j >= modules - 8;
        return !last && (i < 8 || i >= modules - 8) && (j < 8 || j >= modules - 8);
    }

    private static boolean finderDark(int i, int j, int modules) {
        int ring = Math.max(Math.abs(inFinder(i, modules) - 3), Math.abs(inFinder(j, modules) - 3));
        return ring == 3 || ring <= 1;
    }

    private static int inFinder(int i, int modules) {
        return i < 8 ? i : i - modules + 7;
    }

    static void bars(Graphics2D g, Draws draws, double x, double y, double width, double height) {
        g.setColor(Color.BLACK);
        double at = x;
        while (at < x + width) {
            double bar = draws.between(0.2, 0.9);
            g.fill(new Rectangle2D.Double(at, y, bar, height));
            at += bar + draws.between(0.2, 0.8);
        }
    }
}
