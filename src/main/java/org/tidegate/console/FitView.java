package org.tidegate.console;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tidegate.casework.SubmissionView;
import org.tidegate.examination.linkage.Candidate;
import org.tidegate.examination.linkage.FieldWeight;

/**
 * A candidate of the book: what speaks for it and against it, as a running sum.
 *
 * @param linked whether the submission is linked to it now
 */
record FitView(String test, String probability, List<Step> steps, String total, boolean linked) {

    private static final int SHOWN = 4;

    /** One step: its weight in bits, and the sum so far. */
    record Step(String field, String words, String weight, String sum) {}

    static List<FitView> all(SubmissionView v) {
        String linked = v.test().map(t -> t.key().toString()).orElse("");
        return v.assessment().match().candidates().stream()
                .limit(SHOWN)
                .map(c -> of(c, linked))
                .toList();
    }

    private static FitView of(Candidate c, String linked) {
        List<Step> steps = new ArrayList<>();
        double sum = c.priorWeight();
        steps.add(new Step("prior", "", bits(sum), bits(sum)));
        for (FieldWeight w : c.weights()) {
            sum += w.weight();
            steps.add(new Step(w.field().replace('_', ' '), w.words(), bits(w.weight()), bits(sum)));
        }
        String test = c.test().toString();
        return new FitView(
                test, String.format(Locale.ROOT, "%.4f", c.probability()), steps, bits(c.total()), test.equals(linked));
    }

    private static String bits(double weight) {
        return String.format(Locale.ROOT, "%+.1f", weight);
    }
}
