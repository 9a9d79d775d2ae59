package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** An invented head and shoulders in soft gradients, on a unit square. */
final class Portrait {

    private static final Color CLEAR = new Color(0, 0, 0, 0);

    private final Draws draws;
    private final PortraitColours colours;
    private final double x;
    private final double y;
    private final double rx;
    private final double ry;
    private final boolean longHair;

    private Portrait(Draws draws, PortraitColours colours) {
        this.draws = draws;
        this.colours = colours;
        x = 0.5 + draws.between(-0.02, 0.02);
        y = 0.44 + draws.between(-0.03, 0.02);
        rx = draws.between(0.2, 0.235);
        ry = draws.between(0.26, 0.3);
        longHair = draws.coin();
    }

    static Portrait grey(Draws draws) {
        return new Portrait(draws, PortraitColours.grey(draws));
    }

    static Portrait coloured(Draws draws) {
        return new Portrait(draws, PortraitColours.coloured(draws));
    }

    void paint(Graphics2D page, double left, double top, double width, double height) {
        Graphics2D g = (Graphics2D) page.create();
        g.clip(new Rectangle2D.Double(left, top, width, height));
        g.translate(left, top);
        g.scale(width, height);
        Rectangle2D all = new Rectangle2D.Double(0, 0, 1, 1);
        g.setPaint(
                Gradients.along(0, 0, 1, 1, colours.ground(), colours.ground().darker()));
        g.fill(all);
        if (longHair) {
            hairBehind(g);
        }
        shoulders(g);
        neckAndEars(g);
        Path2D face = face();
        g.setPaint(Gradients.round(
                x - rx * 0.25,
                y - ry * 0.2,
                ry * 1.15,
                new float[] {0, 0.65f, 1},
                colours.skin(),
                colours.skin(),
                colours.shadow()));
        g.fill(face);
        double mouth = new PortraitFeatures(colours, x, y, rx, ry).paint(g, draws);
        if (draws.chance(0.3)) {
            beard(g, face, mouth);
        }
        hair(g);
        if (draws.chance(0.25)) {
            glasses(g);
        }
        g.setPaint(Gradients.level(0, 1, new Color(255, 255, 255, 25), CLEAR, new Color(0, 0, 0, 70)));
        g.fill(all);
        g.dispose();
    }

    private void hairBehind(Graphics2D g) {
        g.setColor(colours.hair());
        double tall = ry * draws.between(2.1, 2.9);
        g.fill(new RoundRectangle2D.Double(x - rx * 1.35, y - ry * 1.15, rx * 2.7, tall, rx * 2, ry * 1.6));
    }

    private void shoulders(Graphics2D g) {
        Color dark = colours.cloth().darker();
        g.setPaint(Gradients.along(0.1, 0.8, 0.9, 1, dark, colours.cloth(), dark.darker()));
        Path2D path = new Path2D.Double();
        path.moveTo(-0.02, 1.02);
        path.curveTo(0.02, 0.84, 0.2, 0.82, 0.36, 0.76);
        path.lineTo(0.64, 0.76);
        path.curveTo(0.8, 0.82, 0.98, 0.84, 1.02, 1.02);
        path.closePath();
        g.fill(path);
    }

    private void neckAndEars(Graphics2D g) {
        g.setPaint(Gradients.level(0.38, 0.62, colours.shadow(), colours.skin(), colours.shadow()));
        g.fill(new RoundRectangle2D.Double(x - 0.105, y + ry * 0.5, 0.21, 0.27, 0.15, 0.15));
        g.setColor(Inks.faded(colours.shadow(), 0.6));
        g.fill(new Ellipse2D.Double(x - 0.11, y + ry * 0.72, 0.22, 0.13));
        g.setColor(colours.shadow());
        g.fill(new Ellipse2D.Double(x - rx - 0.025, y - 0.04, 0.05, 0.11));
        g.fill(new Ellipse2D.Double(x + rx - 0.025, y - 0.04, 0.05, 0.11));
    }

    private Path2D face() {
        Path2D path = new Path2D.Double();
        path.moveTo(x - rx, y - ry * 0.2);
        path.curveTo(x - rx, y - ry * 1.1, x + rx, y - ry * 1.1, x + rx, y - ry * 0.2);
        path.curveTo(x + rx * 0.98, y + ry * 0.6, x + rx * 0.5, y + ry, x, y + ry);
        path.curveTo(x - rx * 0.5, y + ry, x - rx * 0.98, y + ry * 0.6, x - rx, y - ry * 0.2);
        path.closePath();
        return path;
    }

    private void beard(Graphics2D g, Path2D face, double mouth) {
        g.setColor(Inks.faded(colours.hair(), 0.5));
        Area area = new Area(face);
        area.intersect(new Area(new Rectangle2D.Double(0, y + ry * 0.42, 1, 1)));
        double top = y + ry * 0.6 - 0.03;
        area.subtract(new Area(new Ellipse2D.Double(x - mouth * 1.1, top, mouth * 2.2, 0.075)));
        g.fill(area);
    }

    private void hair(Graphics2D g) {
        g.setColor(colours.hair());
        Area area = new Area(new Ellipse2D.Double(x - rx * 1.13, y - ry * 1.22, rx * 2.26, ry * 1.7));
        double parting = draws.between(-0.05, 0.05);
        double brow = draws.between(0.55, 0.8);
        area.subtract(new Area(new Ellipse2D.Double(x - rx * 0.9 + parting, y - ry * brow, rx * 1.8, ry * 2)));
        area.subtract(new Area(new Rectangle2D.Double(0, y + ry * 0.1, 1, 1)));
        if (draws.chance(0.9)) {
            g.fill(area);
        }
        Color shine = new Color(255, 255, 255, 50);
        g.setPaint(Gradients.round(x - 0.05, y - ry, 0.25, new float[] {0, 1}, shine, Inks.faded(shine, 0)));
        g.fill(area);
    }

    private void glasses(Graphics2D g) {
        g.setColor(new Color(40, 40, 45));
        g.setStroke(Marks.line(0.012));
        for (int side = -1; side <= 1; side += 2) {
            double left = x + side * rx * 0.43 - 0.07;
            g.draw(new RoundRectangle2D.Double(left, y - ry * 0.05 - 0.045, 0.14, 0.1, 0.07, 0.07));
        }
    }
}
