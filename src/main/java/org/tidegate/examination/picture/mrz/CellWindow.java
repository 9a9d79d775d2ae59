package org.tidegate.examination.picture.mrz;

/**
 * The ink of one character's place, upright, in its own proportions: so much of a pitch wide and of a capital's height high.
 *
 * @param ink row-major, {@link #COLUMNS} × {@link #ROWS}, 0 paper
 */
record CellWindow(float[] ink) {

    /** Width in pitches: a little of the neighbours' room, so that a misplaced glyph is not cut. */
    static final double PITCHES = 1.1;

    /** Height in heights of a capital. */
    static final double CAPITALS = 1.5;

    static final int COLUMNS = 22;
    static final int ROWS = 30;

    /** As seen with the document the other way up. */
    CellWindow turned() {
        float[] out = new float[ink.length];
        for (int i = 0; i < ink.length; i++) {
            out[i] = ink[ink.length - 1 - i];
        }
        return new CellWindow(out);
    }
}
