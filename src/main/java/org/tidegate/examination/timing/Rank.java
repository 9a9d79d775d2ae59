package org.tidegate.examination.timing;

import org.tidegate.finding.Level;

/**
 * The order in which clues are believed: the levels of trust, and within the device level what leans on least first. A clue never
 * overturns one of an earlier rank; clues of one rank that contradict each other leave only what all of them prove.
 */
enum Rank {
    /** What is true of any mail: a photo precedes its message, a hop the next one. */
    ORDER(Level.RECORDED),
    RECORDED(Level.RECORDED),
    NETWORK(Level.NETWORK),
    /** A GPS stamp is a fix that is not younger than the photo. */
    FIX(Level.DEVICE),
    /** Differences within one device, in which its wrong clock cancels out. */
    SAME_DEVICE(Level.DEVICE),
    /** Guesses at how a device's clock stands: its own word, and that people's phones hand over promptly. */
    DEVICE_CLOCK(Level.DEVICE),
    /** A GPS stamp taken as the moment of the photo. */
    FRESH_FIX(Level.DEVICE),
    STATED(Level.STATED);

    private final Level level;

    Rank(Level level) {
        this.level = level;
    }

    /** Whether clues of this rank are habits that we suppose, rather than what something showed. */
    boolean supposed() {
        return this == DEVICE_CLOCK || this == FRESH_FIX;
    }

    Level level() {
        return level;
    }
}
