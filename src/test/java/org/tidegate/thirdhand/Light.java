package org.tidegate.thirdhand;

/** All light on the scene. */
final class Light {

    private static final double BELOW_HORIZON = 0.15;
    private static final double CEILING = 0.35;
    private static final double BRIGHTEST_FIELD = 3;

    private final Lamp lamp;
    private final Shading shading;
    private final Glare glare;

    /** @param span the picture's long side on the table, mm */
    Light(Draws draws, double span, double centreX, double centreY) {
        lamp = Lamp.drawn(draws, span, centreX, centreY);
        shading = new Shading(draws, lamp.kind(), span, centreX, centreY);
        glare = new Glare(draws, lamp.kind());
    }

    Lamp lamp() {
        return lamp;
    }

    String story() {
        return lamp.kind().label + (lamp.coloured() ? " coloured" : "") + shading.story() + glare.story();
    }

    /** How strong the key light is at a place of the table, before the things on it shade it. */
    double field(double x, double y) {
        double free = shading.patches(x, y) * lamp.falloff(x, y);
        return Math.min(free, BRIGHTEST_FIELD) * shading.shapes(x, y);
    }

    /** What a surface mirrors from a direction. */
    double mirrored(Vector direction, double rough) {
        if (direction.z() < 0.05) {
            return BELOW_HORIZON;
        }
        double rx = direction.x() / direction.z();
        double ry = direction.y() / direction.z();
        return CEILING + glare.mirrored(rx, ry, rough) + lamp.mirrored(rx, ry, rough);
    }

    /** The light that reaches a dull surface. */
    Rgb diffuse(double key, double ambient) {
        return lamp.colour().times(lamp.kind().key * key).plus(lamp.around().times(lamp.kind().ambient * ambient));
    }

    /** The colour of what is mirrored. */
    Rgb mirrorColour() {
        return lamp.colour().mix(lamp.around(), 0.5);
    }
}
