package org.tidegate.otherhand;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/** Fingers that come in from outside, side by side, their tips on or near a thing's edge. */
final class Fingers {

    private static final double REACH = 400;

    private final List<Path2D> bones = new ArrayList<>();
    private final double tipX;
    private final double tipY;
    private final double angle;
    private final double thick;
    private final Color skin;
    private final boolean nails;

    /** A first finger with its tip at (x, y) that points against {@code outward}. */
    Fingers(double x, double y, double outward, Draw draw) {
        tipX = x;
        tipY = y;
        angle = outward;
        thick = draw.between(14, 19);
        skin = draw.colour(10, 0xe3b798, 0xd29f7c, 0xb07a56, 0x8a5a3c, 0x5c3a28);
        nails = draw.chance(0.7);
        int count = draw.oneOf(1, 1, 2, 3);
        double side = draw.chance(0.5) ? 1 : -1;
        double bend = draw.bell(0, 18);
        for (int i = 0; i < count; i++) {
            double off = side * i * thick * 1.06;
            bones.add(bone(off, draw.between(0, 9) * i + Math.abs(off) * 0.25, bend));
        }
    }

    private Path2D bone(double off, double back, double bend) {
        double inset = thick / 2 + back;
        Path2D path = new Path2D.Double();
        path.moveTo(px(inset, off), py(inset, off));
        path.curveTo(
                px(inset + 40, off),
                py(inset + 40, off),
                px(90, off + bend),
                py(90, off + bend),
                px(REACH, off + 4 * bend),
                py(REACH, off + 4 * bend));
        return path;
    }

    private double px(double along, double off) {
        return tipX + along * Math.cos(angle) - off * Math.sin(angle);
    }

    private double py(double along, double off) {
        return tipY + along * Math.sin(angle) + off * Math.cos(angle);
    }

    Area covered() {
        Area area = new Area();
        bones.forEach(b -> area.add(new Area(stroke(thick).createStrokedShape(b))));
        return area;
    }

    void paint(Graphics2D g, Light light) {
        Placed.shadow(g, covered(), light, 6);
        for (Path2D bone : bones) {
            finger(g, bone, light);
        }
    }

    private void finger(Graphics2D g, Path2D bone, Light light) {
        Graphics2D own = (Graphics2D) g.create();
        own.clip(stroke(thick).createStrokedShape(bone));
        int steps = 9;
        for (int i = 0; i < steps; i++) {
            double part = i / (double) steps;
            own.setColor(Light.shade(skin, 0.62 + 0.46 * Math.sqrt(part)));
            double move = -0.22 * thick * part;
            own.translate(light.x() * move, light.y() * move);
            own.setStroke(stroke(thick * (1 - 0.85 * part)));
            own.draw(bone);
            own.translate(-light.x() * move, -light.y() * move);
        }
        own.dispose();
        detail(g, bone);
    }

    private void detail(Graphics2D g, Path2D bone) {
        double[] start = new double[6];
        bone.getPathIterator(null).currentSegment(start);
        Graphics2D own = (Graphics2D) g.create();
        own.translate(start[0], start[1]);
        own.rotate(angle);
        if (nails) {
            Shape nail = new Ellipse2D.Double(-thick * 0.44, -thick * 0.25, thick * 0.66, thick * 0.5);
            own.setColor(Light.mix(skin, new Color(0xf2ccc4), 0.32));
            own.fill(nail);
            own.setStroke(new BasicStroke(0.35f));
            own.setColor(Light.shade(skin, 0.75));
            own.draw(nail);
        }
        own.setColor(Light.faint(Light.shade(skin, 0.6), 0.5));
        own.setStroke(new BasicStroke(0.5f));
        for (double x = 0.95 * thick; x < 1.25 * thick; x += 0.12 * thick) {
            own.draw(new java.awt.geom.QuadCurve2D.Double(x, -thick * 0.33, x + 1, 0, x, thick * 0.33));
        }
        own.dispose();
    }

    private static BasicStroke stroke(double wide) {
        return new BasicStroke((float) wide, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }
}
