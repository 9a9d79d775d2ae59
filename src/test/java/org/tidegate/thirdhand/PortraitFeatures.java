package org.tidegate.thirdhand;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.QuadCurve2D;

/** Eyes, nose and mouth of a {@link Portrait}. */
record PortraitFeatures(PortraitColours colours, double x, double y, double rx, double ry) {

    /** @return half of the mouth's width */
    double paint(Graphics2D g, Draws draws) {
        double eyes = y - ry * 0.05;
        eye(g, x - rx * 0.43, eyes);
        eye(g, x + rx * 0.43, eyes);
        nose(g);
        double mouth = draws.between(0.065, 0.09);
        mouth(g, mouth);
        return mouth;
    }

    private void eye(Graphics2D g, double ex, double ey) {
        g.setColor(Inks.faded(colours.shadow(), 0.45));
        g.fill(new Ellipse2D.Double(ex - 0.06, ey - 0.045, 0.12, 0.075));
        g.setColor(new Color(235, 232, 228));
        g.fill(new Ellipse2D.Double(ex - 0.036, ey - 0.013, 0.072, 0.028));
        g.setColor(new Color(45, 35, 30));
        g.fill(new Ellipse2D.Double(ex - 0.014, ey - 0.014, 0.028, 0.028));
        g.setStroke(Marks.stroke(0.016));
        g.setColor(Inks.faded(colours.hair().darker(), 0.85));
        g.draw(new QuadCurve2D.Double(ex - 0.052, ey - 0.052, ex, ey - 0.078, ex + 0.052, ey - 0.052));
        g.setStroke(Marks.line(0.009));
        g.setColor(new Color(60, 40, 35));
        g.draw(new QuadCurve2D.Double(ex - 0.038, ey, ex, ey - 0.026, ex + 0.038, ey));
    }

    private void nose(Graphics2D g) {
        g.setColor(Inks.faded(colours.shadow(), 0.55));
        Path2D path = new Path2D.Double();
        path.moveTo(x + 0.012, y - ry * 0.02);
        path.curveTo(x + 0.03, y + ry * 0.2, x + 0.06, y + ry * 0.35, x + 0.03, y + ry * 0.38);
        path.curveTo(x, y + ry * 0.41, x - 0.02, y + ry * 0.4, x - 0.035, y + ry * 0.37);
        path.curveTo(x, y + ry * 0.36, x + 0.015, y + ry * 0.3, x + 0.012, y - ry * 0.02);
        g.fill(path);
    }

    private void mouth(Graphics2D g, double half) {
        double my = y + ry * 0.6;
        g.setColor(colours.lips());
        Path2D path = new Path2D.Double();
        path.moveTo(x - half, my);
        path.quadTo(x, my - 0.03, x + half, my);
        path.quadTo(x, my + 0.05, x - half, my);
        g.fill(path);
        g.setColor(new Color(80, 35, 35));
        g.setStroke(Marks.line(0.007));
        g.draw(new QuadCurve2D.Double(x - half, my, x, my + 0.008, x + half, my));
    }
}
