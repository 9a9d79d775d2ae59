package org.tidegate.thirdhand;

/**
 * A place of a support.
 *
 * @param height over the table, mm
 * @param gloss 0 dull to 1 mirror
 */
record Surface(Rgb colour, double height, double gloss) {

    static Surface flat(Rgb colour, double gloss) {
        return new Surface(colour, 0, gloss);
    }
}
