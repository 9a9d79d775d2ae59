package org.tidegate.examination.linkage;

import java.util.List;
import java.util.Set;
import org.tidegate.booking.TestKey;

/**
 * One test that the message may be about.
 *
 * @param probability that the message is about it, judged against chance agreement; rivals do not lower it
 * @param priorWeight log2 of the odds before anything was compared
 * @param weights one entry a compared field, in the order of the comparison
 * @param total prior and weights summed: log2 of the odds
 * @param reading index of the reading that fits the test best
 */
public record Candidate(
        TestKey test, double probability, double priorWeight, List<FieldWeight> weights, double total, int reading) {

    /** The field that allows for the same person having taken a test that is not in the book. */
    static final String ANOTHER_TEST = "another_test";

    static final Set<String> NAME = Set.of("given_name", "family_name");

    /** Weight of a field, 0 where nothing was compared. */
    double weightOf(String field) {
        return weights.stream()
                .filter(w -> w.field().equals(field))
                .mapToDouble(FieldWeight::weight)
                .sum();
    }

    double nameWeight() {
        return NAME.stream().mapToDouble(this::weightOf).sum();
    }

    /** The total without that allowance, which is the same for all rivals: by this, rivals are told apart. */
    double evidence() {
        return total
                - weights.stream()
                        .filter(w -> w.field().equals(ANOTHER_TEST))
                        .mapToDouble(FieldWeight::weight)
                        .sum();
    }
}
