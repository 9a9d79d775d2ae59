package org.tidegate.examination.linkage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Compared pairs, counted by their pattern of agreement levels. A pattern holds for each field the index of its level, the
 * closest 0, or {@link #MISSING}.
 */
public final class AgreementPatterns {

    /** A field that one side or the other leaves out. */
    public static final int MISSING = -1;

    private final int[] levels;
    private final Map<List<Integer>, Long> counts = new TreeMap<>(AgreementPatterns::compare);

    /** @param levels how many levels each field has */
    public AgreementPatterns(int... levels) {
        this.levels = levels.clone();
    }

    private static int compare(List<Integer> a, List<Integer> b) {
        return Arrays.compare(toArray(a), toArray(b));
    }

    private static int[] toArray(List<Integer> list) {
        return list.stream().mapToInt(Integer::intValue).toArray();
    }

    /** @throws IllegalArgumentException where the pattern does not fit the fields */
    public void add(long times, int... pattern) {
        if (pattern.length != levels.length) {
            throw new IllegalArgumentException(pattern.length + " levels for " + levels.length + " fields");
        }
        for (int f = 0; f < pattern.length; f++) {
            if (pattern[f] < MISSING || pattern[f] >= levels[f]) {
                throw new IllegalArgumentException("Field " + f + " has no level " + pattern[f]);
            }
        }
        List<Integer> key = new ArrayList<>();
        Arrays.stream(pattern).forEach(key::add);
        counts.merge(key, times, Long::sum);
    }

    int fields() {
        return levels.length;
    }

    int levels(int field) {
        return levels[field];
    }

    /** Each pattern with how many pairs show it, in a fixed order. */
    List<Counted> counted() {
        return counts.entrySet().stream()
                .map(e -> new Counted(toArray(e.getKey()), e.getValue()))
                .toList();
    }

    record Counted(int[] pattern, long count) {}
}
