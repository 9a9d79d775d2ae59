package org.tidegate.examination.linkage;

import java.util.Locale;

/** How well two words of a name agree, the closest first. */
enum TokenLevel {
    /** The same letters in some accepted Latin spelling. */
    EXACT(10),
    /** The same sounds, written as another language writes them. */
    SPELLING(8),
    /** A familiar form of the other. */
    NICKNAME(7),
    /** One slip of the hand away. */
    TYPO(6),
    /** The first letter of the other, or its first letters as a shortened form. */
    INITIAL(4),
    NONE(0);

    final int score;

    TokenLevel(int score) {
        this.score = score;
    }

    boolean agrees() {
        return this != NONE;
    }

    /** As the rules name it. */
    String ruleName() {
        return name().toLowerCase(Locale.ROOT);
    }

    static TokenLevel worse(TokenLevel a, TokenLevel b) {
        return a.compareTo(b) >= 0 ? a : b;
    }
}
