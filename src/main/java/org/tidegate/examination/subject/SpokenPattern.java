package org.tidegate.examination.subject;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A way to say the time.
 *
 * @param elements words, or the slots {@code {h}} and {@code {m}}; {@code {H}} and {@code {M}} take words only
 * @param minutes added to the hour
 * @param spoken how often the spoken minutes count: 1 after, -1 before, 0 for patterns without
 * @param rough about that time only
 * @param languages whose number words fill the slots: bits of {@link Languages}, 0 for any
 */
record SpokenPattern(List<String> elements, int minutes, int spoken, boolean rough, long languages) {

    private static final String HOUR = "{h}";

    static SpokenPattern of(String pattern, String formula, long languages) {
        int spoken = formula.endsWith("-m") ? -1 : formula.endsWith("m") ? 1 : 0;
        String fixed = formula.replaceAll("^~|[+-]m$", "");
        int minutes = fixed.isEmpty() ? 0 : Integer.parseInt(fixed);
        return new SpokenPattern(elements(pattern), minutes, spoken, formula.startsWith("~"), languages);
    }

    /** The words as tokens have them as keys. */
    private static List<String> elements(String pattern) {
        return Arrays.stream(pattern.split(" "))
                .map(e -> e.contains("{") ? e : Fold.key(e))
                .toList();
    }

    /** The number word belongs to a language that says the time like this. */
    boolean takes(Meaning number) {
        return number.number() >= 0 && (languages == 0 || (languages & number.languages()) != 0);
    }

    boolean startsWithSlot() {
        return elements.get(0).startsWith("{");
    }

    /** One word that holds the hour: {@code halb{h}}. */
    boolean compound() {
        String first = elements.get(0);
        return elements.size() == 1 && first.contains(HOUR) && !first.equals(HOUR);
    }

    /** The hour's part of such a word, empty where it is not this pattern's. */
    Optional<String> hourIn(String word) {
        String form = elements.get(0);
        int slot = form.indexOf(HOUR);
        String before = form.substring(0, slot);
        String behind = form.substring(slot + HOUR.length());
        boolean fits =
                word.length() > before.length() + behind.length() && word.startsWith(before) && word.endsWith(behind);
        return fits ? Optional.of(word.substring(before.length(), word.length() - behind.length())) : Optional.empty();
    }

    boolean hasHour() {
        return elements.stream().anyMatch(e -> e.toLowerCase(Locale.ROOT).contains(HOUR));
    }

    int time(int hour, int spokenMinutes) {
        return hour * 60 + minutes + spoken * spokenMinutes;
    }
}
