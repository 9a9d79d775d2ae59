package org.tidegate.thirdhand;

import java.awt.Color;

/**
 * What a housing is moulded of.
 *
 * @param shine 0 dull to 1 mirror
 */
record Plastic(String name, Color colour, double shine) {

    static Plastic drawn(Draws draws) {
        int which = draws.below(8);
        double value = draws.between(0.9, 0.97);
        return switch (which) {
            case 3 -> of("ivory", Inks.hsv(0.12, 0.1, value), draws);
            case 4 -> of("grey", Inks.hsv(0.6, 0.03, 0.8), draws);
            case 5 -> of("light blue", Inks.hsv(0.56, draws.between(0.12, 0.3), 0.93), draws);
            case 6 -> of("pale green", Inks.hsv(0.36, draws.between(0.1, 0.25), 0.9), draws);
            case 7 -> of("pink", Inks.hsv(0.96, draws.between(0.1, 0.25), 0.95), draws);
            default -> of("white", Inks.hsv(draws.share(), 0.015, value), draws);
        };
    }

    private static Plastic of(String name, Color colour, Draws draws) {
        return new Plastic(name, colour, draws.between(0.15, 0.75));
    }
}
