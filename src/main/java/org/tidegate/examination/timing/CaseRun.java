package org.tidegate.examination.timing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.finding.Level;

/** One network's clues taken in order of trust, with what is believed after each level. */
final class CaseRun {

    private final Map<Level, List<Belief>> byLevel = new EnumMap<>(Level.class);

    CaseRun(List<Constraint> clues) {
        List<Belief> beliefs = List.of(new Belief(new EventIndex(clues)));
        for (Rank rank : Rank.values()) {
            List<Constraint> ofRank =
                    clues.stream().filter(c -> c.rank() == rank).toList();
            if (!ofRank.isEmpty()) {
                beliefs = Solver.take(beliefs, ofRank);
            }
            byLevel.put(rank.level(), beliefs);
        }
    }

    Answer answer(Question question, Level level) {
        return Answer.agreed(
                beliefs(level).stream().map(b -> Answer.of(question, b)).toList());
    }

    List<Belief> beliefs() {
        return beliefs(Level.STATED);
    }

    private List<Belief> beliefs(Level level) {
        return byLevel.getOrDefault(level, List.of());
    }

    /** Whether some belief lets the constraint stand. */
    boolean holds(Constraint constraint) {
        return beliefs().stream().anyMatch(b -> !b.setAside(constraint));
    }

    /** Clocks that contradict each other: those set aside in any belief by more than an assumption about people's habits. */
    Optional<Belief.Contradiction> conflict() {
        List<Belief.Contradiction> all = new ArrayList<>();
        beliefs().forEach(b -> all.addAll(b.contradictions()));
        return all.stream().filter(CaseRun::betweenClocks).findFirst();
    }

    private static boolean betweenClocks(Belief.Contradiction contradiction) {
        return contradiction.clues().stream()
                .noneMatch(clue -> clue.leansOn().contains(Assumptions.HANDED_OVER)
                        || clue.leansOn().contains(Assumptions.FRESH_FIX));
    }
}
