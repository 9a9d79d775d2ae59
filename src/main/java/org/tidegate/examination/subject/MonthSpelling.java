package org.tidegate.examination.subject;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Month words at a place of the line, with typing slips in longer ones. */
final class MonthSpelling {

    private static final int SHORTEST_WITH_SLIP = 4;
    private static final Comparator<String> BY_LENGTH =
            Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder());

    /**
     * A month word.
     *
     * @param month 0 for none
     * @param length in tokens
     */
    record Reading(int month, int length, double cost) {}

    static final Reading NONE = new Reading(0, 0, 0);

    /** Months by each of their words with one letter left out, and by the whole word: two words one slip apart share such a key. */
    private final Map<String, List<String>> byRemainder = new HashMap<>();

    private final Map<String, Integer> months;

    MonthSpelling(Map<String, Integer> months) {
        this.months = months;
        months.keySet().stream()
                .filter(w -> w.length() >= SHORTEST_WITH_SLIP)
                .forEach(w -> remainders(w)
                        .forEach(r -> byRemainder
                                .computeIfAbsent(r, k -> new ArrayList<>(1))
                                .add(w)));
    }

    private static List<String> remainders(String word) {
        List<String> all = new ArrayList<>(word.length() + 1);
        all.add(word);
        for (int i = 0; i < word.length(); i++) {
            all.add(word.substring(0, i) + word.substring(i + 1));
        }
        return all;
    }

    Reading at(Line line, int i) {
        if (!line.isWord(i)) {
            return NONE;
        }
        for (Lexicon.Match m : line.matches(i)) {
            if (m.meaning().month() > 0) {
                return new Reading(m.meaning().month(), m.length(), 0);
            }
        }
        return line.meaning(i).unknown() ? slip(line.token(i).key()) : NONE;
    }

    private Reading slip(String word) {
        if (word.length() < SHORTEST_WITH_SLIP - 1) {
            return NONE;
        }
        String best = "";
        for (String remainder : remainders(word)) {
            for (String month : byRemainder.getOrDefault(remainder, List.of())) {
                boolean earlier = best.isEmpty() || BY_LENGTH.compare(month, best) < 0;
                if (earlier && Slips.oneApart(word, month)) {
                    best = month;
                }
            }
        }
        Integer month = months.get(best);
        return month == null ? NONE : new Reading(month, 1, 0.6);
    }
}
