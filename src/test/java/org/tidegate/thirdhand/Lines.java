package org.tidegate.thirdhand;

/**
 * The contrast of a strip's lines, 0 to 1: 1 minus the reflectance at a line's darkest place over that of the membrane beside
 * it, in the channel where the dye absorbs most, in linear light, before glare and the phone.
 */
record Lines(double control, double test) {

    static final Lines NONE = new Lines(0, 0);

    /** The strip that is asked about: sometimes void, mostly negative, faint lines as often as others. */
    static Lines drawn(Draws draws) {
        double control = draws.chance(0.04) ? 0 : draws.between(0.3, 0.95);
        if (draws.chance(0.7)) {
            return new Lines(control, 0);
        }
        return new Lines(control, draws.chance(0.4) ? draws.between(0.05, 0.25) : draws.between(0.1, 0.9));
    }

    /** A further cassette of the picture. */
    static Lines ofAnother(Draws draws) {
        double control = draws.between(0.3, 0.95);
        return new Lines(control, draws.chance(0.6) ? 0 : draws.between(0.1, 0.9));
    }

    /** The second strip of a double cassette. */
    static Lines ofSecondLane(Draws draws) {
        double test = draws.chance(0.3) ? draws.between(0.1, 0.8) : 0;
        return new Lines(draws.between(0.4, 0.9), test);
    }
}
