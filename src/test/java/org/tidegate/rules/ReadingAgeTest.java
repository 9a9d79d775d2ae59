package org.tidegate.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The letters can be read at an age of about 11, which is grade 6 (US) and, on the scales of 100, "easy": 80 and more. */
class ReadingAgeTest {

    private static final double GRADE_OF_AGE_11 = 6.0;
    private static final double HARDEST_PART = 8.0;
    private static final double EASY = 80;

    /** Of Polish no formula is used: its sentences are kept short. Common practice of plain language, no source. */
    private static final double WORDS_A_SENTENCE = 12;

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{[^}]*}");

    /** Counted by ear; from memory. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            en, test, 1
            en, clinic, 2
            en, cassette, 2
            en, laboratory, 5
            en, negative, 3
            en, positive, 3
            en, invalid, 3
            en, infection, 3
            en, people, 2
            en, trained, 1
            en, needed, 2
            en, noses, 2
            en, minutes, 2
            en, picture, 2
            en, cable, 2
            en, service, 2
            en, video, 3
            en, certificate, 4
            es, prueba, 2
            es, clínica, 3
            es, línea, 3
            es, quien, 1
            es, guía, 2
            es, todavía, 4
            es, muy, 1
            es, enviar, 2
            es, documento, 4
            es, ciudad, 2
            fr, clinique, 2
            fr, photo, 2
            fr, cassette, 2
            fr, négatif, 3
            fr, règles, 1
            fr, réponse, 2
            fr, le, 1
            pl, zdjęcie, 2
            pl, przychodnia, 3
            pl, wiadomość, 3
            pl, godzina, 3
            """)
    void syllables(String language, String word, int count) {
        assertThat(Syllables.count(word, Locale.forLanguageTag(language))).isEqualTo(count);
    }

    /** Lengths of sentence and word as they are, so that the formulas alone are checked; the results are reckoned by hand. */
    @Test
    void formulas() {
        Readability r = new Readability(10, 1.5);
        assertThat(r.fleschKincaidGrade()).isCloseTo(6.01, within());
        assertThat(r.fernandezHuerta()).isCloseTo(106.64, within());
        assertThat(r.kandelMoles()).isCloseTo(86.45, within());
        assertThat(Readability.of("The cat sat. It was 07:54!", Locale.ENGLISH)).isEqualTo(new Readability(3, 1));
    }

    @Test
    void english() {
        Map<String, Double> whole = measured("en", true, Readability::fleschKincaidGrade);
        Map<String, Double> parts = measured("en", false, Readability::fleschKincaidGrade);
        print("Flesch–Kincaid grade of English letters", whole);
        print("Flesch–Kincaid grade of their parts", parts);
        SoftAssertions all = new SoftAssertions();
        whole.forEach((k, v) -> all.assertThat(v).as(k).isLessThanOrEqualTo(GRADE_OF_AGE_11));
        parts.forEach((k, v) -> all.assertThat(v).as(k).isLessThanOrEqualTo(HARDEST_PART));
        all.assertAll();
    }

    @Test
    void spanishAndFrench() {
        Map<String, Double> spanish = measured("es", true, Readability::fernandezHuerta);
        Map<String, Double> french = measured("fr", true, Readability::kandelMoles);
        print("Fernández Huerta of Spanish letters", spanish);
        print("Kandel–Moles of French letters", french);
        SoftAssertions all = new SoftAssertions();
        spanish.forEach((k, v) -> all.assertThat(v).as("es " + k).isGreaterThanOrEqualTo(EASY));
        french.forEach((k, v) -> all.assertThat(v).as("fr " + k).isGreaterThanOrEqualTo(EASY));
        all.assertAll();
    }

    @Test
    void polish() {
        Map<String, Double> polish = measured("pl", true, Readability::sentenceLength);
        print("Words a sentence of Polish letters", polish);
        SoftAssertions all = new SoftAssertions();
        polish.forEach((k, v) -> all.assertThat(v).as(k).isLessThanOrEqualTo(WORDS_A_SENTENCE));
        all.assertAll();
    }

    private static Map<String, Double> measured(String language, boolean framed, ToDoubleFunction<Readability> by) {
        LetterTexts texts = Rules.bundled().texts().forLanguage(language);
        Map<String, Double> all = new TreeMap<>();
        letters(texts).forEach((name, blocks) -> {
            Stream<Template> frame =
                    framed ? Stream.of(texts.urgentHelp(), texts.questions(), texts.caution()) : Stream.of();
            String text = Stream.concat(blocks.stream(), frame)
                    .map(t -> PLACEHOLDER.matcher(t.text()).replaceAll("10"))
                    .reduce("", (a, b) -> a + "\n\n" + b);
            all.put(name, by.applyAsDouble(Readability.of(text, Locale.forLanguageTag(language))));
        });
        return all;
    }

    private static Map<String, List<Template>> letters(LetterTexts t) {
        Map<String, List<Template>> all = new LinkedHashMap<>();
        t.plain().forEach(l -> all.put(l.getClass().getSimpleName(), l.blocks()));
        t.results().forEach(l -> all.put(l.getClass().getSimpleName(), l.everything()));
        t.discrepancies()
                .forEach((code, w) -> all.put(
                        "request " + code.code(),
                        Stream.of(
                                        Stream.of(t.request().opening()),
                                        w.everything().stream(),
                                        Stream.of(
                                                t.request().over(), t.request().ending()))
                                .flatMap(s -> s)
                                .toList()));
        return all;
    }

    private static void print(String what, Map<String, Double> figures) {
        double mean = figures.values().stream().mapToDouble(d -> d).average().orElseThrow();
        System.out.printf(Locale.ROOT, "%s: mean %.1f, from %.1f to %.1f%n", what, mean, least(figures), most(figures));
    }

    private static double least(Map<String, Double> figures) {
        return figures.values().stream().mapToDouble(d -> d).min().orElseThrow();
    }

    private static double most(Map<String, Double> figures) {
        return figures.values().stream().mapToDouble(d -> d).max().orElseThrow();
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.data.Offset.offset(1e-9);
    }
}
