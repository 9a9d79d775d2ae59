package org.tidegate.rules;

import java.util.Locale;
import java.util.regex.Pattern;

/** Counts syllables by the letters: right for nearly all words of the letters, by one wrong for some. */
final class Syllables {

    private static final Pattern ENGLISH_SILENT =
            Pattern.compile("(?<=[^aeiouy])e$|(?<=[^aeiouytd])ed$|(?<=[^aeiouysxzcgh])es$");
    private static final Pattern ENGLISH_FINAL_LE = Pattern.compile("[^aeiouyl]les?$");
    private static final Pattern ENGLISH = Pattern.compile("[aeiouy]+");
    private static final Pattern ENGLISH_APART = Pattern.compile("(?<![tscg])i[ao](?!u)|(?<!p)eo|uou|iou(?!s)|ying");

    /** The u of que and gui. */
    private static final Pattern SPANISH_MUTE = Pattern.compile("(?<=q)u(?=[eiéí])|(?<=g)u(?=[eiéí])");

    private static final String STRONG = "aeoáéó";
    private static final String WEAK = "iuü";
    private static final String ACCENTED = "íú";

    private static final Pattern FRENCH_MUTE =
            Pattern.compile("(?<=.[^aeiouyàâéèêëîïôöùûü])e(?:s|nt)?$|(?<=[éiu])es?$|(?<=q)u");
    private static final Pattern FRENCH = Pattern.compile("[aeiouyàâéèêëîïôöùûüœ]+");

    /** An i before a vowel only softens. */
    private static final Pattern POLISH = Pattern.compile("[aeouóąęy]|i(?![aeouóąęy])");

    private Syllables() {}

    static int count(String word, Locale language) {
        int found = word.chars().anyMatch(Character::isDigit)
                ? 1
                : switch (language.getLanguage()) {
                    case "es" -> spanish(word);
                    case "fr" -> matches(FRENCH, FRENCH_MUTE.matcher(word).replaceAll(""));
                    case "pl" -> matches(POLISH, word);
                    default -> english(word);
                };
        return Math.max(1, found);
    }

    private static int english(String word) {
        boolean le = ENGLISH_FINAL_LE.matcher(word).find();
        String said = le ? word : ENGLISH_SILENT.matcher(word).replaceAll("");
        return matches(ENGLISH, said) + matches(ENGLISH_APART, said);
    }

    /** Two strong vowels part; a weak one beside another makes one syllable with it, unless it bears the accent. */
    private static int spanish(String word) {
        String said = SPANISH_MUTE.matcher(word).replaceAll("");
        int count = 0;
        for (int i = 0; i < said.length(); i++) {
            boolean beside = any(STRONG + WEAK, said, i - 1) || any(STRONG, said, i + 1);
            if (any(STRONG + ACCENTED, said, i) || (any(WEAK, said, i) && !beside) || finalY(said, i)) {
                count++;
            }
        }
        return count;
    }

    private static boolean finalY(String word, int i) {
        return word.charAt(i) == 'y' && i == word.length() - 1 && !any(STRONG + WEAK, word, i - 1);
    }

    private static boolean any(String letters, String word, int i) {
        return i >= 0 && i < word.length() && letters.indexOf(word.charAt(i)) >= 0;
    }

    private static int matches(Pattern pattern, String word) {
        return (int) pattern.matcher(word).results().count();
    }
}
