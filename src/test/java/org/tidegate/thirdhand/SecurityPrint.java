package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** The fine-lined background of a page. */
record SecurityPrint(Color first, Color second) {

    private static final int FAMILIES = 3;
    private static final int LINES = 34;
    private static final int POINTS = 90;

    static SecurityPrint drawn(Draws draws) {
        double hue = draws.share();
        return new SecurityPrint(
                Inks.hsv(hue, draws.between(0.06, 0.28), draws.between(0.82, 0.95)),
                Inks.hsv(hue + draws.between(0.08, 0.4), draws.between(0.08, 0.35), draws.between(0.78, 0.95)));
    }

    /** For captions. */
    Color pale() {
        return Inks.faded(second.darker().darker(), 0.9);
    }

    void paint(Graphics2D g, Draws draws, double width, double height) {
        g.setPaint(Gradients.along(0, 0, width, height, first, second, first));
        g.fill(new Rectangle2D.Double(0, 0, width, height));
        g.setStroke(Marks.line(0.13));
        for (int family = 0; family < FAMILIES; family++) {
            g.setColor(Inks.faded((family == 0 ? first : second).darker(), 0.5));
            Waves waves = Waves.drawn(draws);
            boolean rosette = draws.chance(0.4);
            double x = draws.between(0.2, 0.8) * width;
            double y = draws.between(0.2, 0.8) * height;
            for (int line = 0; line < LINES; line++) {
                g.draw(rosette ? waves.ring(line, x, y) : waves.line(line, width, height));
            }
        }
    }

    private record Waves(double swing, double pace, double phase, double ripple) {

        static Waves drawn(Draws draws) {
            return new Waves(
                    draws.between(2, 9), draws.between(0.04, 0.16), draws.between(0, 6), draws.between(0.5, 3));
        }

        Path2D ring(int line, double x, double y) {
            Path2D path = new Path2D.Double();
            for (int i = 0; i <= POINTS; i++) {
                double t = 2 * Math.PI * i / POINTS;
                double r = (6 + line * 0.55) * (1 + 0.18 * Math.sin(t * 9 + line * 0.12 + phase));
                add(path, x + r * Math.cos(t), y + r * Math.sin(t));
            }
            return path;
        }

        Path2D line(int line, double width, double height) {
            Path2D path = new Path2D.Double();
            for (int i = 0; i <= POINTS; i++) {
                double x = i * width / POINTS;
                double wave = swing * Math.sin(pace * x + phase) + ripple * Math.sin(pace * 3.7 * x + line * 0.35);
                add(path, x, line * height / 30 - 3 + wave);
            }
            return path;
        }

        private static void add(Path2D path, double x, double y) {
            if (path.getCurrentPoint() == null) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
    }
}
