package org.tidegate.render;

import java.util.Random;

/**
 * What light, lens and sensor do to the drawn scene.
 *
 * @param exposure gain of all channels
 * @param balance gains of red and blue against green
 * @param falloff share of light lost at the darker side
 * @param falloffAngle towards which side, radians
 * @param shadow depth of a broad soft shadow, 0–1; its edge crosses the picture at {@code shadowAt} (0–1)
 * @param glare strength of a burnt-out reflection, 0 for none; its centre and radius as shares of the picture's width
 * @param defocus radius in pixels
 * @param motion length in pixels
 * @param noise of the light at full exposure
 */
record Optics(
        double exposure,
        double[] balance,
        double falloff,
        double falloffAngle,
        double shadow,
        double shadowAt,
        double glare,
        double glareX,
        double glareY,
        double glareRadius,
        double defocus,
        double motion,
        double motionAngle,
        double noise) {

    static Optics clear() {
        return new Optics(0.95, new double[] {1, 1}, 0.1, 0.6, 0, 0.5, 0, 0.5, 0.5, 0.1, 0.6, 0, 0, 0.012);
    }

    /** An ordinary photo that can be read. */
    static Optics ordinary(Random r) {
        return new Optics(
                0.55 + 0.5 * r.nextDouble(),
                new double[] {0.85 + 0.3 * r.nextDouble(), 0.8 + 0.35 * r.nextDouble()},
                0.35 * r.nextDouble(),
                2 * Math.PI * r.nextDouble(),
                r.nextInt(3) == 0 ? 0.45 * r.nextDouble() : 0,
                0.2 + 0.6 * r.nextDouble(),
                0,
                0.5,
                0.5,
                0.1,
                2.2 * r.nextDouble(),
                r.nextInt(3) == 0 ? 3 * r.nextDouble() : 0,
                Math.PI * r.nextDouble(),
                0.008 + 0.022 * r.nextDouble());
    }

    /** An ordinary photo that can be read; one in six with the haze of a lamp over a part of it. */
    static Optics drawn(Draws d) {
        boolean hazy = d.oneIn(6);
        return new Optics(
                d.in(0.55, 1.05, 0.45, 0.55),
                new double[] {d.in(0.85, 1.15, 0.78, 0.85), d.in(0.8, 1.15, 1.15, 1.22)},
                d.in(0, 0.35, 0.35, 0.42),
                d.in(0, 2 * Math.PI),
                d.oneIn(3) ? d.in(0, 0.45, 0.45, 0.55) : 0,
                d.in(0.2, 0.8),
                hazy ? d.in(0.03, 0.15) : 0,
                d.in(0, 1),
                d.in(0, 0.75),
                d.in(0.05, 0.3),
                d.in(0, 2.2, 2.2, 2.6),
                d.oneIn(3) ? d.in(0, 3, 3, 3.5) : 0,
                d.in(0, Math.PI),
                d.in(0.008, 0.03, 0.03, 0.035));
    }

    Optics exposed(double gain) {
        return with(gain, glare, glareX, glareY, glareRadius, defocus, motion);
    }

    Optics defocused(double radius) {
        return with(exposure, glare, glareX, glareY, glareRadius, radius, motion);
    }

    Optics moved(double length) {
        return with(exposure, glare, glareX, glareY, glareRadius, defocus, length);
    }

    Optics glaring(double strength, double x, double y, double radius) {
        return with(exposure, strength, x, y, radius, defocus, motion);
    }

    private Optics with(
            double gain, double shine, double shineX, double shineY, double shineRadius, double blur, double smear) {
        return new Optics(
                gain,
                balance,
                falloff,
                falloffAngle,
                shadow,
                shadowAt,
                shine,
                shineX,
                shineY,
                shineRadius,
                blur,
                smear,
                motionAngle,
                noise);
    }

    void apply(LinearImage image, Random random) {
        light(image);
        image.defocus(defocus);
        image.motion(motion, motionAngle);
        image.noise(noise, noise / 4, random);
    }

    private void light(LinearImage image) {
        double[] gains = {balance[0] * exposure, exposure, balance[1] * exposure};
        for (int y = 0; y < image.height; y++) {
            for (int x = 0; x < image.width; x++) {
                double u = (double) x / image.width;
                double v = (double) y / image.width;
                double light = lightAt(u, v);
                double shine = glareAt(u, v);
                for (int c = 0; c < 3; c++) {
                    int i = y * image.width + x;
                    image.planes[c][i] = (float) (image.planes[c][i] * light * gains[c] + shine);
                }
            }
        }
    }

    private double lightAt(double u, double v) {
        double along = (u - 0.5) * Math.cos(falloffAngle) + (v - 0.4) * Math.sin(falloffAngle);
        double across = (u - 0.5) * Math.sin(falloffAngle) - (v - 0.4) * Math.cos(falloffAngle) + 0.5;
        double edge = 1 / (1 + Math.exp(-(across - shadowAt) / 0.03));
        return (1 - falloff * (0.5 + along)) * (1 - shadow * edge);
    }

    private double glareAt(double u, double v) {
        double distance = Math.hypot(u - glareX, v - glareY) / glareRadius;
        return glare == 0 ? 0 : glare / (1 + Math.pow(distance, 6));
    }
}
