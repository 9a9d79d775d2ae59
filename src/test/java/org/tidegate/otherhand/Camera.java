package org.tidegate.otherhand;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** A pinhole with some barrel or cushion, over a flat table; the picture's x axis lies along the table's. */
final class Camera {

    private static final double MARGIN = 0.03;

    final int width;
    final int height;
    private final double[] eye;
    private final double[] right;
    private final double[] down;
    private final double[] forward;
    private final double bend;
    private double focal = 1;
    private double centreX;
    private double centreY;

    private Camera(List<Point2D> keep, boolean portrait, Draw draw) {
        int longSide = draw.whole(1000, 1600);
        int shortSide = (int) Math.round(longSide / draw.oneOf(4.0 / 3, 4.0 / 3, 4.0 / 3, 1.5, 16.0 / 9));
        width = portrait ? shortSide : longSide;
        height = portrait ? longSide : shortSide;
        double tilt = Math.toRadians(draw.mostlyLow(0, 32));
        double azimuth = draw.chance(0.6) ? draw.bell(Math.PI / 2, 0.3) : draw.turn();
        Rectangle2D around = around(keep);
        double away = Math.max(draw.between(200, 480), 1.5 * Math.max(around.getWidth(), around.getHeight()));
        forward =
                new double[] {-Math.sin(tilt) * Math.cos(azimuth), -Math.sin(tilt) * Math.sin(azimuth), Math.cos(tilt)};
        eye = new double[] {
            around.getCenterX() - away * forward[0], around.getCenterY() - away * forward[1], -away * forward[2]
        };
        right = unit(1 - forward[0] * forward[0], -forward[0] * forward[1], -forward[0] * forward[2]);
        down = cross(forward, right);
        bend = draw.bell(0, 0.012);
        frame(keep, draw);
    }

    /** A camera that has all of {@code keep} in its frame. */
    static Camera over(List<Point2D> keep, boolean portrait, Draw draw) {
        return new Camera(keep, portrait, draw);
    }

    private void frame(List<Point2D> keep, Draw draw) {
        Rectangle2D seen =
                around(keep.stream().map(p -> toPicture(p.getX(), p.getY())).toList());
        double most = Math.min(width / seen.getWidth(), height / seen.getHeight()) * (1 - 2 * MARGIN);
        double zoom = most * (1 - draw.mostlyLow(0, 0.4));
        double slackX = (width * (1 - 2 * MARGIN) - zoom * seen.getWidth()) / 2;
        double slackY = (height * (1 - 2 * MARGIN) - zoom * seen.getHeight()) / 2;
        focal = zoom;
        centreX = width / 2.0 - zoom * seen.getCenterX() + draw.between(-slackX, slackX);
        centreY = height / 2.0 - zoom * seen.getCenterY() + draw.between(-slackY, slackY);
    }

    /** Where a point of the table stands in the picture; the lens's bend, at most 3 % of the frame, is left out. */
    Point2D toPicture(double x, double y) {
        double[] p = {x - eye[0], y - eye[1], -eye[2]};
        double depth = dot(p, forward);
        return new Point2D.Double(centreX + focal * dot(p, right) / depth, centreY + focal * dot(p, down) / depth);
    }

    /** Which point of the table a pixel shows. */
    void toTable(double px, double py, double[] xy) {
        double halfX = width / 2.0;
        double halfY = height / 2.0;
        double rx = px - halfX;
        double ry = py - halfY;
        double bent = 1 + bend * ((rx * rx + ry * ry) / (halfX * halfX + halfY * halfY));
        double u = (halfX + rx * bent - centreX) / focal;
        double v = (halfY + ry * bent - centreY) / focal;
        double dz = u * right[2] + v * down[2] + forward[2];
        double s = -eye[2] / dz;
        xy[0] = eye[0] + s * (u * right[0] + v * down[0] + forward[0]);
        xy[1] = eye[1] + s * (u * right[1] + v * down[1] + forward[1]);
    }

    /** Pixels a millimetre, about the given point of the table. */
    double density(double x, double y) {
        return toPicture(x - 5, y - 5).distance(toPicture(x + 5, y + 5)) / Math.sqrt(200);
    }

    /** How far a point {@code high} over the table seems moved on the table. */
    Point2D lean(double x, double y, double high) {
        double share = high / (-eye[2] - high);
        return new Point2D.Double((x - eye[0]) * share, (y - eye[1]) * share);
    }

    /** The part of the table in the frame. */
    Rectangle2D view() {
        Rectangle2D view = null;
        double[] xy = new double[2];
        for (int i = 0; i < 16; i++) {
            toTable((i & 3) / 3.0 * width, (i >> 2) / 3.0 * height, xy);
            if (view == null) {
                view = new Rectangle2D.Double(xy[0], xy[1], 0, 0);
            }
            view.add(xy[0], xy[1]);
        }
        return view;
    }

    private static Rectangle2D around(List<Point2D> points) {
        Rectangle2D box =
                new Rectangle2D.Double(points.get(0).getX(), points.get(0).getY(), 0, 0);
        points.forEach(box::add);
        return box;
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double[] unit(double x, double y, double z) {
        double norm = Math.sqrt(x * x + y * y + z * z);
        return new double[] {x / norm, y / norm, z / norm};
    }
}
