package org.tidegate.examination.timing;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tidegate.examination.timing.Telling.Chain;
import org.tidegate.finding.WindowVerdict.DerivationStep;

/** Tells what follows on each way out of a contradiction among equally trusted clues. */
final class Alternatives {

    private Alternatives() {}

    /**
     * The chains of all beliefs, each way opened by what it does not believe; where all say the same, once.
     *
     * @param chains of each belief, in the same order
     */
    static List<Chain> told(List<Belief> beliefs, List<List<Chain>> chains, Question question) {
        if (chains.stream().distinct().count() == 1) {
            return chains.get(0);
        }
        List<Chain> told = new ArrayList<>();
        for (int i = 0; i < beliefs.size(); i++) {
            told.add(new Chain(List.of(opening(beliefs, beliefs.get(i), question)), List.of()));
            told.addAll(chains.get(i));
        }
        return told;
    }

    private static DerivationStep opening(List<Belief> all, Belief one, Question question) {
        List<Constraint> doubted = one.contradictions().stream()
                .map(Belief.Contradiction::setAside)
                .filter(c -> !all.stream().allMatch(b -> b.setAside(c)))
                .distinct()
                .toList();
        boolean supposed = doubted.stream().allMatch(c -> c.rank().supposed());
        String words = doubted.stream()
                .map(c -> c.clue().words())
                .collect(Collectors.joining(supposed ? " or " : ", and that "));
        return new DerivationStep(
                question.earlier(),
                question.later(),
                Duration.ZERO,
                Telling.ALTERNATIVE,
                (supposed ? "Unless " : "Leaving aside that ") + words + ":");
    }
}
