package org.tidegate.examination.linkage;

import java.util.Locale;
import java.util.stream.Collectors;

/** Running sums as text, for failing tests. */
final class Explanations {

    private Explanations() {}

    static String of(LinkageResult result) {
        return result.candidates().stream().map(Explanations::of).collect(Collectors.joining("\n"));
    }

    private static String of(Candidate c) {
        String fields = c.weights().stream()
                .map(w -> String.format(Locale.ROOT, "%s %s %+.1f (%s)", w.field(), w.level(), w.weight(), w.words()))
                .collect(Collectors.joining("; "));
        return String.format(
                Locale.ROOT,
                "  %s p=%.5f total %.1f = prior %.1f; %s",
                c.test(),
                c.probability(),
                c.total(),
                c.priorWeight(),
                fields);
    }
}
