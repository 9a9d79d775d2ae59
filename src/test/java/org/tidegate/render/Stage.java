package org.tidegate.render;

import java.util.Arrays;
import java.util.List;

/** Lays things on a table, draws what the camera sees, in linear light. */
record Stage(Table table, List<Placed> things, List<Finger> fingers, View view) {

    private static final double SHADOW_MM = 2.2;
    private static final double SHADOW_DEPTH = 0.45;
    private static final double[] DECODED = decoded();

    /** A finger that lies over things: from a place beyond the edge to its tip, millimetres. */
    record Finger(double fromX, double fromY, double tipX, double tipY, double radius, double[] skin) {

        double outside(double x, double y) {
            double dx = tipX - fromX;
            double dy = tipY - fromY;
            double t = ((x - fromX) * dx + (y - fromY) * dy) / (dx * dx + dy * dy);
            double c = Math.max(0, Math.min(1, t));
            return Math.hypot(x - fromX - c * dx, y - fromY - c * dy) - radius;
        }
    }

    LinearImage draw() {
        LinearImage image = new LinearImage(view.width(), view.height());
        double[] sum = new double[3];
        for (int y = 0; y < view.height(); y++) {
            for (int x = 0; x < view.width(); x++) {
                Arrays.fill(sum, 0);
                for (int i = 0; i < 4; i++) {
                    double[] place = view.toTable(x + 0.25 + 0.5 * (i & 1), y + 0.25 + 0.5 * (i >> 1));
                    add(sum, place[0], place[1]);
                }
                image.set(x, y, sum[0] / 4, sum[1] / 4, sum[2] / 4);
            }
        }
        return image;
    }

    private void add(double[] sum, double x, double y) {
        double[] colour = table.colour(x, y);
        double light = 1;
        for (Placed thing : things) {
            if (thing.beyond(x, y, 3 * SHADOW_MM)) {
                continue;
            }
            double outside = thing.outside(x - 0.8, y - 1.2);
            if (outside < SHADOW_MM && thing.outside(x, y) > 0) {
                light *= 1 - SHADOW_DEPTH * Math.min(1, (SHADOW_MM - outside) / SHADOW_MM / 1.5);
            }
            if (thing.outside(x, y) < 0) {
                light = cover(colour, thing, x, y, light);
            }
        }
        for (Finger finger : fingers) {
            double outside = finger.outside(x, y);
            if (outside < 0) {
                double round = Math.sqrt(Math.max(0, 1 - Math.pow(1 + outside / finger.radius(), 2)));
                for (int c = 0; c < 3; c++) {
                    colour[c] = finger.skin()[c] * (0.7 + 0.3 * round);
                }
                light = 1;
            } else if (outside < SHADOW_MM * 2) {
                light *= 0.6 + 0.4 * outside / (SHADOW_MM * 2);
            }
        }
        for (int c = 0; c < 3; c++) {
            sum[c] += light * linear(colour[c]);
        }
    }

    /** Lays a thing's colour over what is there; light on it is full where it is opaque. */
    private static double cover(double[] colour, Placed thing, double x, double y, double light) {
        double[] at = thing.onSheet(x, y);
        int px = Math.max(0, Math.min(thing.sheet().getWidth() - 1, (int) at[0]));
        int py = Math.max(0, Math.min(thing.sheet().getHeight() - 1, (int) at[1]));
        int argb = thing.sheet().getRGB(px, py);
        double alpha = (argb >>> 24) / 255.0;
        for (int c = 0; c < 3; c++) {
            colour[c] = colour[c] * (1 - alpha) + ((argb >> (16 - 8 * c)) & 255) * alpha;
        }
        return light * (1 - alpha) + alpha;
    }

    private static double linear(double coded) {
        return DECODED[(int) Math.max(0, Math.min(2550, Math.round(coded * 10)))];
    }

    private static double[] decoded() {
        double[] table = new double[2551];
        for (int i = 0; i < table.length; i++) {
            double v = i / 2550.0;
            table[i] = v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
        }
        return table;
    }
}
