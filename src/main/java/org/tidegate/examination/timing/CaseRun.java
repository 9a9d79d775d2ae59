package org.tidegate.examination.timing;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidegate.finding.Level;

/** One network's clues taken in order of trust, with what is believed after each level. */
final class CaseRun {

    private final Map<Level, List<Belief>> byLevel = new EnumMap<>(Level.class);
    private final Wording wording;

    CaseRun(List<Constraint> clues, Wording wording) {
        this.wording = wording;
        List<Belief> beliefs = List.of(new Belief(new EventIndex(clues)));
        for (Rank rank : Rank.values()) {
            beliefs = Solver.take(beliefs, ofRank(clues, rank));
            byLevel.put(rank.level(), beliefs);
        }
    }

    private static List<Constraint> ofRank(List<Constraint> clues, Rank rank) {
        return clues.stream().filter(c -> c.rank() == rank).toList();
    }

    /** What all beliefs after the level say. */
    Answer answer(Question question, Level level) {
        List<Belief> beliefs = byLevel.getOrDefault(level, List.of());
        List<Answer> answers =
                beliefs.stream().map(b -> Answer.of(question, b, wording)).toList();
        Answer agreed = Answer.agreed(answers);
        return beliefs.size() == 1
                ? agreed
                : agreed.provenBy(() -> Alternatives.told(
                        beliefs, answers.stream().map(Answer::chains).toList(), question));
    }

    /** Undetermined, with what the clues leave possible. */
    Answer known(Question question) {
        List<List<Telling.Chain>> known =
                beliefs().stream().map(b -> Answer.known(question, b, wording)).toList();
        return Answer.undetermined(Alternatives.told(beliefs(), known, question));
    }

    /** What is believed at the end: one belief for each way out of a contradiction among equals. */
    List<Belief> beliefs() {
        return byLevel.getOrDefault(Level.STATED, List.of());
    }

    /** Whether all of the constraints stand together in some belief. */
    boolean holds(List<Constraint> constraints) {
        return beliefs().stream().anyMatch(b -> constraints.stream().noneMatch(b::setAside));
    }

    /** The first clock set aside because it contradicts other clocks, and not only a habit that we supposed. */
    Optional<Belief.Contradiction> conflict() {
        return beliefs().stream()
                .flatMap(b -> b.contradictions().stream())
                .filter(CaseRun::betweenClocks)
                .findFirst();
    }

    private static boolean betweenClocks(Belief.Contradiction contradiction) {
        return contradiction.clues().stream()
                .noneMatch(clue -> clue.leansOn().contains(Assumptions.HANDED_OVER)
                        || clue.leansOn().contains(Assumptions.FRESH_FIX));
    }
}
