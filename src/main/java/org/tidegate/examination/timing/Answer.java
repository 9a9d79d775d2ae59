package org.tidegate.examination.timing;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.tidegate.finding.Assumption;
import org.tidegate.finding.Clue;
import org.tidegate.finding.Event;
import org.tidegate.finding.Level;
import org.tidegate.finding.Verdict;
import org.tidegate.finding.WindowVerdict;
import org.tidegate.finding.WindowVerdict.DerivationStep;

/**
 * What one or several beliefs answer to a question: decided where all of them agree.
 *
 * @param margin milliseconds to the nearest widened edge, negative outside; 0 where undetermined
 * @param late where outside: whether behind the window rather than before it
 * @param beforeStart where outside and not late: whether even the earlier event had not come, clocks at their word
 */
record Answer(Verdict verdict, long margin, boolean late, boolean beforeStart, List<List<Link>> chains) {

    /** One edge of a proving path. */
    record Link(DerivationStep step, List<Assumption> leansOn) {}

    /** The answer of one belief. */
    static Answer of(Question q, Belief belief) {
        Network word = belief.word();
        Network tolerant = belief.tolerant();
        if (!word.events().knows(q.earlier()) || !word.events().knows(q.later())) {
            return undetermined();
        }
        long least = word.least(q.earlier(), q.later());
        long most = word.most(q.earlier(), q.later());
        if (most <= q.widenedMost() && least >= q.widenedLeast()) {
            return inside(q, word, Math.min(q.widenedMost() - most, least - q.widenedLeast()));
        }
        if (tolerant.least(q.earlier(), q.later()) > q.widenedMost()) {
            long margin = q.widenedMost() - tolerant.least(q.earlier(), q.later());
            return outside(margin, true, false, chain(tolerant, q.later(), q.earlier()));
        }
        if (q.hasStart() && tolerant.most(q.earlier(), q.later()) < q.widenedLeast()) {
            long margin = tolerant.most(q.earlier(), q.later()) - q.widenedLeast();
            return outside(margin, false, most < 0, chain(tolerant, q.earlier(), q.later()));
        }
        return undetermined();
    }

    private static Answer inside(Question q, Network word, long margin) {
        List<List<Link>> chains = new ArrayList<>();
        if (q.hasStart()) {
            chains.add(chain(word, q.later(), q.earlier()));
        }
        chains.add(chain(word, q.earlier(), q.later()));
        return new Answer(Verdict.INSIDE, margin, false, false, chains);
    }

    private static Answer outside(long margin, boolean late, boolean beforeStart, List<Link> chain) {
        return new Answer(Verdict.OUTSIDE, margin, late, beforeStart, List.of(chain));
    }

    static Answer undetermined() {
        return new Answer(Verdict.UNDETERMINED, 0, false, false, List.of());
    }

    boolean decided() {
        return verdict != Verdict.UNDETERMINED;
    }

    /** What all of the answers say; undetermined where they differ, or where there are none. The first one leads. */
    static Answer agreed(List<Answer> answers) {
        Answer first = answers.get(0);
        if (answers.stream().anyMatch(a -> a.verdict() != first.verdict())) {
            return undetermined();
        }
        Set<List<Link>> chains = new LinkedHashSet<>();
        answers.forEach(a -> chains.addAll(a.chains()));
        Answer closest = answers.stream()
                .min(Comparator.comparingLong(a -> Math.abs(a.margin())))
                .orElse(first);
        return new Answer(first.verdict(), closest.margin(), first.late(), first.beforeStart(), List.copyOf(chains));
    }

    /** The verdict with its proof. */
    WindowVerdict verdict(WindowVerdict.Check check, Level level) {
        if (!decided()) {
            return new WindowVerdict(
                    check, Verdict.UNDETERMINED, Optional.empty(), List.of(), Optional.empty(), List.of());
        }
        TreeMap<String, Assumption> assumptions = new TreeMap<>();
        List<DerivationStep> steps = new ArrayList<>();
        for (List<Link> chain : chains) {
            for (Link link : chain) {
                link.leansOn().forEach(a -> assumptions.put(a.toString(), a));
                steps.add(link.step());
            }
        }
        return new WindowVerdict(
                check,
                verdict,
                Optional.of(level),
                List.copyOf(assumptions.values()),
                Optional.of(Duration.ofMillis(margin)),
                steps);
    }

    private static List<Link> chain(Network network, Event from, Event to) {
        return network.path(from, to).stream()
                .map(edge -> link(network.events(), edge))
                .toList();
    }

    private static Link link(EventIndex events, Network.Edge edge) {
        Clue clue = edge.origin().clue();
        return new Link(
                new DerivationStep(
                        events.event(edge.from()),
                        events.event(edge.to()),
                        Duration.ofMillis(edge.bound()),
                        clue.place(),
                        clue.words()),
                clue.leansOn());
    }
}
