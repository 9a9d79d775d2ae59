package org.tidegate.thirdhand;

import java.awt.Color;

/** Of a head and shoulders; {@code shadow} is the skin's shaded side. */
record PortraitColours(Color skin, Color shadow, Color ground, Color hair, Color cloth, Color lips) {

    static PortraitColours grey(Draws draws) {
        Color skin = grey(draws, 0.5, 0.85);
        return new PortraitColours(
                skin,
                Inks.hsv(0, 0, shaded(skin)),
                new Color(215, 215, 215),
                grey(draws, 0.1, 0.6),
                grey(draws, 0.15, 0.6),
                new Color(90, 90, 90));
    }

    static PortraitColours coloured(Draws draws) {
        double dark = draws.share();
        Color skin = Inks.hsv(0.055 + 0.02 * draws.share(), 0.28 + 0.35 * dark, 0.93 - 0.5 * dark);
        return new PortraitColours(
                skin,
                Inks.hsv(0.04, 0.5, shaded(skin)),
                Inks.hsv(0.6, draws.between(0, 0.12), draws.between(0.78, 0.93)),
                Inks.hsv(draws.between(0.04, 0.11), draws.between(0.2, 0.6), draws.between(0.1, 0.6)),
                Inks.hsv(draws.share(), draws.between(0.1, 0.6), draws.between(0.15, 0.7)),
                new Color(165, 85, 80));
    }

    private static Color grey(Draws draws, double low, double high) {
        return Inks.hsv(0, 0, draws.between(low, high));
    }

    private static double shaded(Color skin) {
        return skin.getRed() / 255.0 * 0.62;
    }
}
