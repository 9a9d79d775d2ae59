package org.tidegate.examination.timing;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
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
 * @param chains the paths that prove it
 */
record Answer(Verdict verdict, long margin, Optional<TimeJudgement.Side> side, List<Chain> chains) {

    private static final Answer UNDETERMINED = new Answer(Verdict.UNDETERMINED, 0, Optional.empty(), List.of());

    static Answer undetermined() {
        return UNDETERMINED;
    }

    /** @param known what the clues say all the same */
    static Answer undetermined(List<Chain> known) {
        return new Answer(Verdict.UNDETERMINED, 0, Optional.empty(), known);
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
        List<Chain> chains = new ArrayList<>();
        if (q.hasStart()) {
            chains.add(telling.chain(word, q.later(), q.earlier(), true));
        }
        chains.add(telling.chain(word, q.earlier(), q.later(), true));
        long margin = Math.min(q.widenedMost() - most, least - q.widenedLeast());
        return new Answer(Verdict.INSIDE, margin, Optional.empty(), chains);
    }

    /** No value lies inside, every tolerance granted. */
    private static Answer outside(Question q, Belief belief, Telling telling) {
        Network tolerant = belief.tolerant();
        long tooLate = tolerant.least(q.earlier(), q.later()) - q.widenedMost();
        if (tooLate > 0) {
            Chain chain = telling.chain(tolerant, q.later(), q.earlier(), false);
            return new Answer(Verdict.OUTSIDE, -tooLate, Optional.of(TimeJudgement.Side.LATE), List.of(chain));
        }
        long tooEarly = q.widenedLeast() - tolerant.most(q.earlier(), q.later());
        if (q.hasStart() && tooEarly > 0) {
            Chain chain = telling.chain(tolerant, q.earlier(), q.later(), false);
            boolean beforeStart = belief.word().most(q.earlier(), q.later()) < 0;
            TimeJudgement.Side side = beforeStart ? TimeJudgement.Side.BEFORE_TEST : TimeJudgement.Side.EARLY;
            return new Answer(Verdict.OUTSIDE, -tooEarly, Optional.of(side), List.of(chain));
        }
        return UNDETERMINED;
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
        Set<Chain> chains = new LinkedHashSet<>();
        answers.forEach(a -> chains.addAll(a.chains()));
        long margin = answers.stream()
                .map(Answer::margin)
                .min(Comparator.comparingLong(Math::abs))
                .orElse(0L);
        return new Answer(first.verdict(), margin, first.side(), List.copyOf(chains));
    }

    /** The same for the networks of several zones: the first one's proof in full, the others in one sentence. */
    static Answer agreedInAllZones(List<Answer> answers, Question q) {
        Answer agreed = agreed(answers);
        Answer first = answers.get(0);
        if (!agreed.decided() || answers.size() == 1) {
            return agreed;
        }
        List<Chain> chains = new ArrayList<>(first.chains());
        List<Assumption> leansOn =
                agreed.chains().stream().flatMap(c -> c.leansOn().stream()).toList();
        chains.add(new Chain(List.of(Telling.otherZones(q, answers.size() - 1, agreed.margin())), leansOn));
        return new Answer(agreed.verdict(), agreed.margin(), first.side(), chains);
    }

    /** The verdict with its proof; undetermined, with what is known. */
    WindowVerdict verdict(WindowVerdict.Check check, Level level) {
        TreeMap<String, Assumption> assumptions = new TreeMap<>();
        List<DerivationStep> steps = new ArrayList<>();
        for (Chain chain : chains) {
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
