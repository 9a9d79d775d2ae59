package org.tidegate.examination.linkage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.apache.commons.text.similarity.JaroWinklerSimilarity;

/**
 * Links a set of person records with itself: blocks, compares, counts u over random pairs, estimates m by
 * expectation-maximisation, and takes a pair as one person where its probability is at least one half. No label is looked at
 * before the score.
 */
final class PairLinkage {

    /** Levels of text fields: equal, Jaro–Winkler from these up, else different. */
    private static final double[] NEAR = {0.95, 0.88, 0.75};

    private static final int LEVELS = NEAR.length + 2;
    private static final int MOST_IN_BLOCK = 200;
    /** In small sets all pairs are compared, so that no block tilts the estimate. */
    private static final int MOST_WITHOUT_BLOCKS = 1500;

    private static final int RANDOM_PAIRS = 400_000;
    private static final JaroWinklerSimilarity JARO_WINKLER = new JaroWinklerSimilarity();

    private final PersonRecords records;

    PairLinkage(PersonRecords records) {
        this.records = records;
    }

    record Score(long found, long right, long wanted, long blocked, int rounds) {

        double f1() {
            return 2.0 * right / (found + wanted);
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "pairs %d, found %d, right %d: precision %.4f, recall %.4f, F1 %.4f (%d compared, %d rounds)",
                    wanted,
                    found,
                    right,
                    right / (double) Math.max(1, found),
                    right / (double) wanted,
                    f1(),
                    blocked,
                    rounds);
        }
    }

    Score score() {
        List<int[]> pairs = records.size() <= MOST_WITHOUT_BLOCKS ? allPairs() : blockedPairs();
        List<int[]> compared = new ArrayList<>();
        AgreementPatterns patterns = patterns();
        for (int[] pair : pairs) {
            int[] pattern = compare(pair[0], pair[1]);
            compared.add(pattern);
            patterns.add(1, pattern);
        }
        WeightEstimate e = ExpectationMaximisation.estimateM(patterns, guess(pairs.size()));
        long found = 0;
        long right = 0;
        for (int i = 0; i < pairs.size(); i++) {
            if (e.probability(compared.get(i)) >= 0.5) {
                found++;
                right += records.samePerson(pairs.get(i)[0], pairs.get(i)[1]) ? 1 : 0;
            }
        }
        return new Score(found, right, records.truePairs(), pairs.size(), e.rounds());
    }

    private AgreementPatterns patterns() {
        int[] levels = new int[records.fields().size()];
        Arrays.fill(levels, LEVELS);
        return new AgreementPatterns(levels);
    }

    private int[] compare(int a, int b) {
        int[] pattern = new int[records.fields().size()];
        for (int f = 0; f < pattern.length; f++) {
            pattern[f] = level(records.value(a, f), records.value(b, f));
        }
        return pattern;
    }

    private static int level(String a, String b) {
        if (a.isEmpty() || b.isEmpty()) {
            return AgreementPatterns.MISSING;
        }
        if (a.equals(b)) {
            return 0;
        }
        double near = JARO_WINKLER.apply(a, b);
        for (int l = 0; l < NEAR.length; l++) {
            if (near >= NEAR[l] || (l == 0 && a.length() > 3 && Damerau.distance(a, b, 2) < 2)) {
                return l + 1;
            }
        }
        return LEVELS - 1;
    }

    private List<int[]> allPairs() {
        List<int[]> pairs = new ArrayList<>();
        for (int a = 0; a < records.size(); a++) {
            for (int b = a + 1; b < records.size(); b++) {
                pairs.add(new int[] {a, b});
            }
        }
        return pairs;
    }

    /** Pairs that share a value, or the start of one together with the start of another; very common values do not block. */
    private List<int[]> blockedPairs() {
        Map<String, List<Integer>> blocks = new LinkedHashMap<>();
        for (int r = 0; r < records.size(); r++) {
            for (String key : keys(r)) {
                blocks.computeIfAbsent(key, k -> new ArrayList<>()).add(r);
            }
        }
        BitSet[] partners = new BitSet[records.size()];
        Arrays.setAll(partners, r -> new BitSet());
        List<int[]> pairs = new ArrayList<>();
        for (List<Integer> block : blocks.values()) {
            if (block.size() <= MOST_IN_BLOCK) {
                addPairs(block, partners, pairs);
            }
        }
        return pairs;
    }

    private static void addPairs(List<Integer> block, BitSet[] partners, List<int[]> pairs) {
        for (int i = 0; i < block.size(); i++) {
            for (int j = i + 1; j < block.size(); j++) {
                int a = block.get(i);
                int b = block.get(j);
                if (!partners[a].get(b)) {
                    partners[a].set(b);
                    pairs.add(new int[] {a, b});
                }
            }
        }
    }

    private List<String> keys(int r) {
        List<String> keys = new ArrayList<>();
        int fields = records.fields().size();
        for (int f = 0; f < fields; f++) {
            String value = records.value(r, f);
            if (value.length() < 3) {
                continue;
            }
            keys.add(f + "=" + value);
            for (int g = f + 1; g < fields; g++) {
                String other = records.value(r, g);
                if (!other.isEmpty()) {
                    keys.add(f + "&" + g + "=" + start(value) + "|" + start(other));
                }
            }
        }
        return keys;
    }

    private static String start(String value) {
        return value.substring(0, Math.min(4, value.length()));
    }

    /** u counted over random pairs, nearly all of two persons; m guessed from near agreement down. */
    private WeightEstimate guess(int pairs) {
        int fields = records.fields().size();
        double[][] u = new double[fields][LEVELS];
        double[][] m = new double[fields][];
        Arrays.setAll(m, f -> new double[] {0.8, 0.1, 0.04, 0.03, 0.03});
        for (double[] field : u) {
            Arrays.fill(field, 0.5);
        }
        Random random = new Random(1969);
        for (int i = 0; i < RANDOM_PAIRS; i++) {
            int a = random.nextInt(records.size());
            int b = random.nextInt(records.size());
            if (a != b) {
                count(u, compare(a, b));
            }
        }
        for (double[] field : u) {
            double sum = Arrays.stream(field).sum();
            Arrays.setAll(field, l -> field[l] / sum);
        }
        return new WeightEstimate(Math.min(0.5, records.size() / (double) Math.max(1, pairs)), m, u, 0, 0);
    }

    private static void count(double[][] u, int[] pattern) {
        for (int f = 0; f < pattern.length; f++) {
            if (pattern[f] != AgreementPatterns.MISSING) {
                u[f][pattern[f]]++;
            }
        }
    }
}
