package org.tidegate.examination.linkage;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.tidegate.rules.MatchingRules;
import org.tidegate.rules.MatchingRules.AgreementLevel;

/**
 * Re-estimates m and u from messages whose tests nobody labelled: u is counted over pairs of a message and a test picked without
 * regard to it, m by expectation-maximisation over the pairs that matching would compare (Winkler 1988). Where the history shows
 * little, the live rules weigh in. Pure; changes nothing.
 */
public final class WeightTuning {

    /** As many observations as the live m and u are worth. */
    private static final double LIVE_M_COUNTS = 20;

    private static final double LIVE_U_COUNTS = 200;

    /** Tests that a message is compared with to count u; evenly spread over the open ones. */
    private static final int PICKED = 100;

    private final MatchingRules rules;
    private final Linker linker;
    private final TestIndex index;
    private final AgreementPatterns compared;
    private final double[][] picked;
    private long pairs;

    private WeightTuning(MatchingRules rules, ZoneId zone, Nicknames nicknames, TestIndex index) {
        this.rules = rules;
        this.linker = new Linker(rules, zone, nicknames);
        this.index = index;
        int[] levels = rules.fields().stream().mapToInt(f -> f.levels().size()).toArray();
        this.compared = new AgreementPatterns(levels);
        this.picked = Arrays.stream(levels).mapToObj(double[]::new).toArray(double[][]::new);
    }

    /**
     * A line a level, in the order of the rules; empty where no message had a test to compare with.
     *
     * @param history one statement a message
     * @param index every test of that time
     */
    public static List<TunedLevel> tune(
            MatchingRules rules, ZoneId zone, Nicknames nicknames, List<Statement> history, TestIndex index) {
        WeightTuning tuning = new WeightTuning(rules, zone, nicknames, index);
        history.forEach(tuning::compare);
        return tuning.pairs == 0 ? List.of() : tuning.estimate(history.size());
    }

    private void compare(Statement statement) {
        FieldComparisons comparisons = linker.comparisons(statement, index);
        int[] likeliest = linker.likeliest(statement, index);
        for (int rank : likeliest) {
            compared.add(1, pattern(statement, comparisons, rank));
            pairs++;
        }
        TestIndex.Range open = linker.open(statement, index);
        int step = Math.max(1, open.size() / PICKED);
        for (int rank = open.from(); rank < open.to(); rank += step) {
            int other = rank;
            if (Arrays.stream(likeliest).limit(1).noneMatch(best -> best == other)) {
                count(pattern(statement, comparisons, rank));
            }
        }
    }

    private int[] pattern(Statement statement, FieldComparisons comparisons, int rank) {
        List<FieldWeight> found = new ArrayList<>();
        found.addAll(
                comparisons.person(statement.readings().get(0), index.test(rank).appointment()));
        found.addAll(comparisons.test(statement.readings().get(0), index.test(rank), true));
        found.addAll(comparisons.place(statement.readings().get(0), index.test(rank)));
        return rules.fields().stream().mapToInt(f -> level(f, found)).toArray();
    }

    private static int level(MatchingRules.Field field, List<FieldWeight> found) {
        for (FieldWeight w : found) {
            if (w.field().equals(field.name())) {
                return IntStream.range(0, field.levels().size())
                        .filter(l -> field.levels().get(l).name().equals(w.level()))
                        .findFirst()
                        .orElse(AgreementPatterns.MISSING);
            }
        }
        return AgreementPatterns.MISSING;
    }

    private void count(int[] pattern) {
        for (int f = 0; f < pattern.length; f++) {
            if (pattern[f] != AgreementPatterns.MISSING) {
                picked[f][pattern[f]]++;
            }
        }
    }

    private List<TunedLevel> estimate(int messages) {
        double[][] u = new double[picked.length][];
        double[][] m = new double[picked.length][];
        for (int f = 0; f < u.length; f++) {
            u[f] = blended(
                    picked[f], levels(f).stream().mapToDouble(AgreementLevel::u).toArray(), LIVE_U_COUNTS);
            m[f] = levels(f).stream().mapToDouble(AgreementLevel::m).toArray();
        }
        double share = Math.min(0.5, messages / (double) pairs);
        WeightEstimate guess = new WeightEstimate(share, m, u, 0, 0);
        return candidates(ExpectationMaximisation.estimateM(compared, guess), u);
    }

    private List<TunedLevel> candidates(WeightEstimate estimate, double[][] u) {
        List<TunedLevel> tuned = new ArrayList<>();
        for (int f = 0; f < u.length; f++) {
            double[] expected = expected(estimate, f);
            double matches = Arrays.stream(expected).sum();
            double[] m = blended(
                    expected, levels(f).stream().mapToDouble(AgreementLevel::m).toArray(), LIVE_M_COUNTS);
            for (int l = 0; l < m.length; l++) {
                AgreementLevel live = levels(f).get(l);
                tuned.add(new TunedLevel(
                        rules.fields().get(f).name(), live, new AgreementLevel(live.name(), m[l], u[f][l]), matches));
            }
        }
        return List.copyOf(tuned);
    }

    /** How many matches are expected to show each level of the field. */
    private double[] expected(WeightEstimate estimate, int field) {
        double[] expected = new double[levels(field).size()];
        for (AgreementPatterns.Counted c : compared.counted()) {
            if (c.pattern()[field] != AgreementPatterns.MISSING) {
                expected[c.pattern()[field]] += estimate.probability(c.pattern()) * c.count();
            }
        }
        return expected;
    }

    private List<AgreementLevel> levels(int field) {
        return rules.fields().get(field).levels();
    }

    /** Shares of the counts, with the live shares as so many observations more. */
    private static double[] blended(double[] counts, double[] live, double weight) {
        double sum = Arrays.stream(counts).sum();
        double liveSum = Arrays.stream(live).sum();
        double[] shares = new double[counts.length];
        Arrays.setAll(shares, l -> (counts[l] + weight * live[l] / liveSum) / (sum + weight));
        return shares;
    }
}
