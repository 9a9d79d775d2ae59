package org.tidegate.thirdhand;

import java.awt.Color;

/** Colours of print, in sRGB code. */
final class Inks {

    static final Color NIGHT = new Color(25, 25, 30);
    static final Color PAPER = new Color(244, 243, 239);
    static final Color PEN_BLUE = new Color(25, 35, 110);

    private Inks() {}

    static Color hsv(double hue, double saturation, double value) {
        return Color.getHSBColor((float) hue, (float) saturation, (float) value);
    }

    static Color faded(Color colour, double opacity) {
        return new Color(
                colour.getRed(), colour.getGreen(), colour.getBlue(), (int) (255 * Curves.clamp(opacity, 0, 1)));
    }

    /** Moulded in rather than printed on: the plastic's own colour in its own shadow. */
    static Color engraved(Color plastic) {
        return new Color(
                Math.max(0, plastic.getRed() - 45),
                Math.max(0, plastic.getGreen() - 45),
                Math.max(0, plastic.getBlue() - 42));
    }
}
