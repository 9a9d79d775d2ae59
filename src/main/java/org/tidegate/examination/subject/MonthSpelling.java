package org.tidegate.examination.subject;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Month words at a place of the line, with typing slips in longer ones. */
final class MonthSpelling {

    private static final int SHORTEST_WITH_SLIP = 4;

    /**
     * A month word.
     *
     * @param month 0 for none
     * @param length in tokens
     */
    record Reading(int month, int length, double cost) {}

    static final Reading NONE = new Reading(0, 0, 0);

    private final Map<Integer, List<Map.Entry<String, Integer>>> byLength;

    MonthSpelling(Map<String, Integer> months) {
        byLength = months.entrySet().stream()
                .filter(e -> e.getKey().length() >= SHORTEST_WITH_SLIP)
                .collect(Collectors.groupingBy(e -> e.getKey().length()));
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
        for (int length = word.length() - 1; length <= word.length() + 1; length++) {
            for (Map.Entry<String, Integer> month : byLength.getOrDefault(length, List.of())) {
                if (Slips.oneApart(word, month.getKey())) {
                    return new Reading(month.getValue(), 1, 0.6);
                }
            }
        }
        return NONE;
    }
}
