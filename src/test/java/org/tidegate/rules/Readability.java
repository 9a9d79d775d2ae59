package org.tidegate.rules;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * How hard a text is to read, by the published formulas. Numbers and clock times count as one word of one syllable.
 *
 * @param sentenceLength words a sentence
 * @param wordLength syllables a word
 */
record Readability(double sentenceLength, double wordLength) {

    private static final Pattern SENTENCE = Pattern.compile("(?<=[.!?])\\s+|\\R{2,}");
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}]+(?:['’:-][\\p{L}\\p{N}]+)*");

    static Readability of(String text, Locale language) {
        List<String> sentences = SENTENCE.splitAsStream(text.strip())
                .filter(s -> WORD.matcher(s).find())
                .toList();
        List<String> words = WORD.matcher(text).results().map(m -> m.group()).toList();
        int syllables = words.stream()
                .mapToInt(w -> Syllables.count(w.toLowerCase(Locale.ROOT), language))
                .sum();
        return new Readability((double) words.size() / sentences.size(), (double) syllables / words.size());
    }

    /**
     * US school grade; about five less than the age in years. Kincaid, Fishburne, Rogers, Chissom: Derivation of New Readability
     * Formulas for Navy Enlisted Personnel, Research Branch Report 8-75 (1975).
     */
    double fleschKincaidGrade() {
        return 0.39 * sentenceLength + 11.8 * wordLength - 15.59;
    }

    /** Spanish, 100 is the easiest. J. Fernández Huerta: Medidas sencillas de lecturabilidad (1959), as words a sentence. */
    double fernandezHuerta() {
        return 206.84 - 60 * wordLength - 1.02 * sentenceLength;
    }

    /** French, 100 is the easiest. L. Kandel, A. Moles: Application de l'indice de Flesch à la langue française (1958). */
    double kandelMoles() {
        return 207 - 1.015 * sentenceLength - 73.6 * wordLength;
    }
}
