package org.tidegate.examination.timing;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.tidegate.examination.timing.Telling.Chain;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.Level;
import org.tidegate.finding.Verdict;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.finding.WindowVerdict.DerivationStep;

/**
 * What one or several beliefs answer to a question: decided where all of them agree.
 *
 * @param margin milliseconds to the nearest widened edge, negative outside; 0 where undetermined
 * @param side where outside
 * @param proof tells the paths that prove it: told only where it is asked for, since most networks' proofs are not
 */
record Answer(Verdict verdict, long margin, Optional<TimeJudgement.Side> side, Supplier<List<Chain>> proof) {

    private static final Answer UNDETERMINED = new Answer(Verdict.UNDETERMINED, 0, Optional.empty(), List::of);

    static Answer undetermined() {
        return UNDETERMINED;
    }

    /** @param known what the clues say all the same */
    static Answer undetermined(List<Chain> known) {
        return new Answer(Verdict.UNDETERMINED, 0, Optional.empty(), () -> known);
    }

    /** The bounds that a belief has, every clock at its word. */
    static List<Chain> known(Question q, Belief belief, Wording wording) {
        Network word = belief.word();
        if (!word.events().knows(q.earlier()) || !word.events().knows(q.later())) {
            return List.of();
        }
        List<Chain> known = new ArrayList<>();
        Telling telling = new Telling(wording, q);
        if (q.hasStart() && word.least(q.earlier(), q.later()) > -Network.FREE) {
            known.add(telling.chain(word, q.later(), q.earlier(), true));
        }
        if (word.most(q.earlier(), q.later()) < Network.FREE) {
            known.add(telling.chain(word, q.earlier(), q.later(), true));
        }
        return known;
    }

    /** The answer of one belief. */
    static Answer of(Question q, Belief belief, Wording wording) {
        EventIndex events = belief.word().events();
        if (!events.knows(q.earlier()) || !events.knows(q.later())) {
            return UNDETERMINED;
        }
        Answer inside = inside(q, belief.word(), new Telling(wording, q));
        return inside.decided() ? inside : outside(q, belief, new Telling(wording, q));
    }

    /** All possible values lie inside, every clock at its word. */
    private static Answer inside(Question q, Network word, Telling telling) {
        long least = word.least(q.earlier(), q.later());
        long most = word.most(q.earlier(), q.later());
        if (most > q.widenedMost() || least < q.widenedLeast()) {
            return UNDETERMINED;
        }
        long margin = Math.min(q.widenedMost() - most, least - q.widenedLeast());
        return new Answer(Verdict.INSIDE, margin, Optional.empty(), () -> bothEdges(q, word, telling));
    }

    private static List<Chain> bothEdges(Question q, Network word, Telling telling) {
        List<Chain> chains = new ArrayList<>();
        if (q.hasStart()) {
            chains.add(telling.chain(word, q.later(), q.earlier(), true));
        }
        chains.add(telling.chain(word, q.earlier(), q.later(), true));
        return chains;
    }

    /** No value lies inside, every tolerance granted. */
    private static Answer outside(Question q, Belief belief, Telling telling) {
        Network tolerant = belief.tolerant();
        long tooLate = tolerant.least(q.earlier(), q.later()) - q.widenedMost();
        if (tooLate > 0) {
            return new Answer(
                    Verdict.OUTSIDE,
                    -tooLate,
                    Optional.of(TimeJudgement.Side.LATE),
                    () -> List.of(telling.chain(tolerant, q.later(), q.earlier(), false)));
        }
        long tooEarly = q.widenedLeast() - tolerant.most(q.earlier(), q.later());
        if (q.hasStart() && tooEarly > 0) {
            boolean beforeStart = belief.word().most(q.earlier(), q.later()) < 0;
            TimeJudgement.Side side = beforeStart ? TimeJudgement.Side.BEFORE_TEST : TimeJudgement.Side.EARLY;
            return new Answer(
                    Verdict.OUTSIDE,
                    -tooEarly,
                    Optional.of(side),
                    () -> List.of(telling.chain(tolerant, q.earlier(), q.later(), false)));
        }
        return UNDETERMINED;
    }

    /** The same answer, told otherwise. */
    Answer provenBy(Supplier<List<Chain>> otherProof) {
        return new Answer(verdict, margin, side, otherProof);
    }

    List<Chain> chains() {
        return proof.get();
    }

    boolean decided() {
        return verdict != Verdict.UNDETERMINED;
    }

    /** What all of the answers, at least one, say; undetermined where they differ. The first one leads. */
    static Answer agreed(List<Answer> answers) {
        Answer first = answers.get(0);
        if (answers.stream().anyMatch(a -> a.verdict() != first.verdict())) {
            return UNDETERMINED;
        }
        long margin = answers.stream()
                .map(Answer::margin)
                .min(Comparator.comparingLong(Math::abs))
                .orElse(0L);
        return new Answer(first.verdict(), margin, first.side(), () -> together(answers));
    }

    private static List<Chain> together(List<Answer> answers) {
        return answers.stream().flatMap(a -> a.chains().stream()).distinct().toList();
    }

    /** The same for the networks of several zones: the first one's proof in full, the others in one sentence. */
    static Answer agreedInAllZones(List<Answer> answers, Question q) {
        Answer agreed = agreed(answers);
        Answer first = answers.get(0);
        if (!agreed.decided() || answers.size() == 1) {
            return agreed;
        }
        return new Answer(agreed.verdict(), agreed.margin(), first.side(), () -> summedUp(answers, agreed, q));
    }

    private static List<Chain> summedUp(List<Answer> answers, Answer agreed, Question q) {
        List<Chain> chains = new ArrayList<>(answers.get(0).chains());
        List<Assumption> leansOn =
                agreed.chains().stream().flatMap(c -> c.leansOn().stream()).toList();
        chains.add(new Chain(List.of(Telling.otherZones(q, answers.size() - 1, agreed.margin())), leansOn));
        return chains;
    }

    /** The verdict with its proof; undetermined, with what is known. */
    WindowVerdict verdict(WindowVerdict.Check check, Level level) {
        TreeMap<String, Assumption> assumptions = new TreeMap<>();
        List<DerivationStep> steps = new ArrayList<>();
        for (Chain chain : chains()) {
            chain.leansOn().forEach(a -> assumptions.put(a.toString(), a));
            steps.addAll(chain.steps());
        }
        return new WindowVerdict(
                check,
                verdict,
                decided() ? Optional.of(level) : Optional.empty(),
                List.copyOf(assumptions.values()),
                decided() ? Optional.of(Duration.ofMillis(margin)) : Optional.empty(),
                steps);
    }
}
