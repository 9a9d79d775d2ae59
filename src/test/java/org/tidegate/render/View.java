package org.tidegate.render;

import java.util.Random;

/**
 * A pinhole camera over the table: picture pixels to table millimetres and back.
 *
 * @param widthMm table width seen across the picture's middle
 * @param cosX cosine of the camera's lean towards the picture's upper edge; {@code sinX} its sine
 * @param cosY cosine of its lean towards the right edge; {@code sinY} its sine
 */
record View(int width, int height, double widthMm, double cosX, double sinX, double cosY, double sinY) {

    /**
     * @param tiltX lean towards the picture's upper edge, radians
     * @param tiltY the same towards its right edge
     */
    View(int width, int height, double widthMm, double tiltX, double tiltY) {
        this(width, height, widthMm, Math.cos(tiltX), Math.sin(tiltX), Math.cos(tiltY), Math.sin(tiltY));
    }

    /** Distance of the camera in picture widths: an ordinary phone lens sees about its distance. */
    private static final double DISTANCE = 1.15;

    static View random(Random r, int width, int height, double widthMm) {
        return new View(width, height, widthMm, 0.28 * (r.nextDouble() - 0.5) * 2, 0.28 * (r.nextDouble() - 0.5) * 2);
    }

    double heightMm() {
        return widthMm * height / width;
    }

    /** Table place under a picture place; the origin is under the picture's middle. */
    double[] toTable(double px, double py) {
        double x = (px - width / 2.0) / width / DISTANCE;
        double y = (py - height / 2.0) / width / DISTANCE;
        double[] ray = ray(x, y);
        double depth = DISTANCE * widthMm;
        double[] axis = ray(0, 0);
        double t = depth * axis[2] / ray[2];
        return new double[] {ray[0] * t - axis[0] * depth, ray[1] * t - axis[1] * depth};
    }

    /** Direction of a pixel's ray after leaning the camera about the picture's axes. */
    private double[] ray(double x, double y) {
        double z1 = y * sinX + cosX;
        return new double[] {x * cosY + z1 * sinY, y * cosX - sinX, z1 * cosY - x * sinY};
    }
}
