package org.tidegate.examination.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.tidegate.finding.Clue;

/**
 * What follows from the clues believed so far, twice: with every clock at its word, and with every tolerance granted.
 *
 * <p>A clue that misfits the word of more trusted ones is stretched until it fits, at most by its tolerance; where that is not enough,
 * all clues give way by the same part of theirs. So what is possible at word is always possible with the tolerances. A clue that even
 * all tolerances cannot reconcile is set aside.
 */
final class Belief {

    /** In how fine parts of their tolerances clues give way together. */
    private static final int PARTS = 64;

    private Network word;
    private final Network tolerant;
    private final List<Fit> fits;
    private final List<Contradiction> contradictions;

    /** A believed clue as it stands in the network at word, in milliseconds. */
    record Fit(Constraint constraint, long least, long most) {}

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
        this(new Network(events), new Network(events), new ArrayList<>(), new ArrayList<>());
    }

    private Belief(Network word, Network tolerant, List<Fit> fits, List<Contradiction> contradictions) {
        this.word = word;
        this.tolerant = tolerant;
        this.fits = fits;
        this.contradictions = contradictions;
    }

    Belief copy() {
        return new Belief(word.copy(), tolerant.copy(), new ArrayList<>(fits), new ArrayList<>(contradictions));
    }

    Network word() {
        return word;
    }

    Network tolerant() {
        return tolerant;
    }

    List<Fit> fits() {
        return List.copyOf(fits);
    }

    List<Contradiction> contradictions() {
        return contradictions;
    }

    boolean setAside(Constraint constraint) {
        return contradictions.stream().anyMatch(c -> c.setAside().equals(constraint));
    }

    void setAside(Constraint constraint, List<Constraint> cycle) {
        contradictions.add(new Contradiction(constraint, cycle));
    }

    /** Believes the clue where the tolerances let it stand; returns the clues of the negative cycle where they do not. */
    List<Constraint> believe(Constraint c) {
        Fit granted = part(c, PARTS);
        List<Network.Edge> cycle = cycle(tolerant, granted);
        if (!cycle.isEmpty()) {
            return cycle.stream().map(Network.Edge::origin).toList();
        }
        add(tolerant, granted);
        Fit fit = stretched(c);
        fits.add(fit);
        if (cycle(word, fit).isEmpty()) {
            add(word, fit);
        } else {
            giveWayTogether();
        }
        return List.of();
    }

    /** The clue widened until it touches what more trusted ones leave possible, at most by its tolerance. */
    private Fit stretched(Constraint c) {
        long possibleMost = word.most(c.clue().earlier(), c.clue().later());
        long possibleLeast = word.least(c.clue().earlier(), c.clue().later());
        long least = Math.max(Math.min(c.least(), possibleMost), c.least() - c.tolerance());
        long most = Math.min(Math.max(c.most(), possibleLeast), c.most() + c.tolerance());
        return new Fit(c, least, most);
    }

    private void giveWayTogether() {
        int enough = PARTS;
        for (int step = PARTS / 2; step > 0; step /= 2) {
            enough -= fitTogether(enough - step) ? step : 0;
        }
        Network together = new Network(word.events());
        for (int i = 0; i < fits.size(); i++) {
            fits.set(i, part(fits.get(i).constraint(), enough));
            add(together, fits.get(i));
        }
        word = together;
    }

    private boolean fitTogether(int parts) {
        Network trial = new Network(word.events());
        for (Fit fit : fits) {
            Fit given = part(fit.constraint(), parts);
            if (!cycle(trial, given).isEmpty()) {
                return false;
            }
            add(trial, given);
        }
        return true;
    }

    private static Fit part(Constraint c, int parts) {
        long slack = c.tolerance() * parts / PARTS;
        return new Fit(c, c.least() - slack, c.most() + slack);
    }

    private static List<Network.Edge> cycle(Network network, Fit fit) {
        return edges(network, fit)
                .map(network::cycle)
                .filter(cycle -> !cycle.isEmpty())
                .findFirst()
                .orElse(List.of());
    }

    private static void add(Network network, Fit fit) {
        edges(network, fit).forEach(network::add);
    }

    private static Stream<Network.Edge> edges(Network network, Fit fit) {
        EventIndex events = network.events();
        return Stream.concat(
                fit.constraint().upper(events, fit.most()).stream(),
                fit.constraint().lower(events, fit.least()).stream());
    }
}
