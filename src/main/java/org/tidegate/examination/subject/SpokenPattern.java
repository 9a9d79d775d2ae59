package org.tidegate.examination.subject;

import java.util.Arrays;
import java.util.List;

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

    static SpokenPattern of(String pattern, String formula, long languages) {
        int spoken = formula.endsWith("-m") ? -1 : formula.endsWith("m") ? 1 : 0;
        String fixed = formula.replaceAll("^~|[+-]m$", "");
        int minutes = fixed.isEmpty() ? 0 : Integer.parseInt(fixed);
        return new SpokenPattern(elements(pattern), minutes, spoken, formula.startsWith("~"), languages);
    }

    /** The words as tokens have them as keys. */
    private static List<String> elements(String pattern) {
        return Arrays.stream(pattern.split(" "))
                .map(e -> e.startsWith("{") ? e : Fold.key(e))
                .toList();
    }

    /** The number word belongs to a language that says the time like this. */
    boolean takes(Meaning number) {
        return number.number() >= 0 && (languages == 0 || (languages & number.languages()) != 0);
    }

    boolean startsWithSlot() {
        return elements.get(0).startsWith("{");
    }

    boolean hasHour() {
        return elements.stream().anyMatch(e -> e.equalsIgnoreCase("{h}"));
    }

    int time(int hour, int spokenMinutes) {
        return hour * 60 + minutes + spoken * spokenMinutes;
    }
}
