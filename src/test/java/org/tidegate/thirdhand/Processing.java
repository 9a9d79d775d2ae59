package org.tidegate.thirdhand;

/**
 * What a phone does to a picture after the sensor.
 *
 * @param sharpen 0 for none
 * @param saturation 1 leaves it
 * @param contrast 0 leaves it
 */
record Processing(double sharpen, double saturation, double contrast) {

    /** Where highlights begin to be rolled off. */
    private static final double SHOULDER = 0.6;

    private static final double LEAST_EDGE = 0.006;
    private static final double MOST_HALO = 0.22;

    Frame of(Frame light) {
        Frame toned = light.changed((i, j, c) -> saturated(new Rgb(tone(c.red()), tone(c.green()), tone(c.blue()))));
        if (sharpen == 0) {
            return toned;
        }
        Frame soft = Optics.gaussian(toned, toned.longSide() > 2500 ? 1.6 : 1);
        return toned.changed((i, j, c) -> {
            double edge = luma(c) - luma(soft.at(i, j));
            boolean noise = Math.abs(edge) < LEAST_EDGE;
            double halo = noise ? 0 : Curves.clamp(edge * sharpen * 1.6, -MOST_HALO, MOST_HALO);
            return c.plus(Rgb.grey(halo));
        });
    }

    private Rgb saturated(Rgb c) {
        return Rgb.grey(luma(c)).mix(c, saturation);
    }

    private static double luma(Rgb c) {
        return 0.3 * c.red() + 0.59 * c.green() + 0.11 * c.blue();
    }

    /** Shoulder, sRGB curve, and an S over it. */
    private double tone(double light) {
        if (light <= 0) {
            return 0;
        }
        double over = 1 - SHOULDER;
        double rolled = light < SHOULDER ? light : SHOULDER + over * (1 - Math.exp(-(light - SHOULDER) / over));
        double v = Rgb.curve(rolled);
        return Curves.mix(v, v * v * (3 - 2 * v), 0.35 * contrast);
    }
}
