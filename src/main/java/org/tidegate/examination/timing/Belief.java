package org.tidegate.examination.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.tidegate.finding.Clue;

/**
 * What follows from the clues believed so far, twice: with every clock at its word, and with every tolerance granted.
 *
 * <p>A clue that misfits the word of more trusted ones by less than the tolerances is stretched until it fits: the network at word
 * stays consistent. One that even the tolerances cannot reconcile is set aside.
 */
final class Belief {

    private final Network word;
    private final Network tolerant;
    private final List<Contradiction> contradictions;

    /**
     * @param setAside the clue not believed
     * @param cycle all clues of the negative cycle, the one set aside first
     */
    record Contradiction(Constraint setAside, List<Constraint> cycle) {

        List<Clue> clues() {
            return cycle.stream().map(Constraint::clue).distinct().toList();
        }
    }

    Belief(EventIndex events) {
        this(new Network(events), new Network(events), new ArrayList<>());
    }

    private Belief(Network word, Network tolerant, List<Contradiction> contradictions) {
        this.word = word;
        this.tolerant = tolerant;
        this.contradictions = contradictions;
    }

    Belief copy() {
        return new Belief(word.copy(), tolerant.copy(), new ArrayList<>(contradictions));
    }

    Network word() {
        return word;
    }

    Network tolerant() {
        return tolerant;
    }

    List<Contradiction> contradictions() {
        return contradictions;
    }

    boolean setAside(Constraint constraint) {
        return contradictions.stream().anyMatch(c -> c.setAside().equals(constraint));
    }

    /** Believes the clue where the tolerances let it stand; returns the clues of the negative cycle where they do not. */
    List<Constraint> believe(Constraint c) {
        List<Network.Edge> granted = edges(c, c.least() - c.tolerance(), c.most() + c.tolerance());
        for (Network.Edge edge : granted) {
            List<Network.Edge> cycle = tolerant.cycle(edge);
            if (!cycle.isEmpty()) {
                return cycle.stream().map(Network.Edge::origin).toList();
            }
        }
        granted.forEach(tolerant::add);
        edges(c, stretchedLeast(c), stretchedMost(c)).forEach(word::add);
        return List.of();
    }

    void setAside(Constraint constraint, List<Constraint> cycle) {
        contradictions.add(new Contradiction(constraint, cycle));
    }

    private long stretchedLeast(Constraint c) {
        return Math.min(c.least(), word.most(c.clue().earlier(), c.clue().later()));
    }

    private long stretchedMost(Constraint c) {
        return Math.max(c.most(), word.least(c.clue().earlier(), c.clue().later()));
    }

    private List<Network.Edge> edges(Constraint c, long least, long most) {
        EventIndex events = word.events();
        return Stream.concat(c.upper(events, most).stream(), c.lower(events, least).stream())
                .toList();
    }
}
