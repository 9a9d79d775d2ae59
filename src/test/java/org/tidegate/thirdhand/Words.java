package org.tidegate.thirdhand;

import java.util.Locale;

/** Invented names and words, from syllables. */
final class Words {

    private static final String[] SYLLABLES = {
        "va", "lo", "rin", "mek", "ta", "su", "bel", "or", "na", "quil", "dre", "ha", "jo", "ves", "ki", "pam", "ul",
        "ster", "wen", "gri", "zo", "fe"
    };

    private Words() {}

    static String name(Draws draws, int syllables) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < syllables; i++) {
            text.append(draws.oneOf(SYLLABLES));
        }
        text.setCharAt(0, Character.toUpperCase(text.charAt(0)));
        return text.toString();
    }

    static String capitals(Draws draws, int syllables) {
        return upper(name(draws, syllables));
    }

    static String upper(String text) {
        return text.toUpperCase(Locale.ROOT);
    }

    static String digits(Draws draws, int count) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < count; i++) {
            text.append(draws.below(10));
        }
        return text.toString();
    }

    static String sentence(Draws draws, int words) {
        StringBuilder text = new StringBuilder(name(draws, 1 + draws.below(3)));
        for (int i = 1; i < words; i++) {
            text.append(' ').append(name(draws, 1 + draws.below(3)).toLowerCase(Locale.ROOT));
        }
        return text.append('.').toString();
    }

    /** A day as cards write it. */
    static String day(Draws draws) {
        return String.format(
                Locale.ROOT, "%02d.%02d.%d", 1 + draws.below(28), 1 + draws.below(12), 1950 + draws.below(80));
    }
}
