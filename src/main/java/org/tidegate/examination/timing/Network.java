package org.tidegate.examination.timing;

import java.util.ArrayList;
import java.util.List;
import org.tidegate.finding.Event;

/**
 * A simple temporal network (Dechter, Meiri, Pearl 1991) that is minimal and consistent at any time.
 *
 * <p>An edge says {@code to − from ≤ bound}, in milliseconds. Each new edge closes the table of shortest paths in O(n²); one that
 * would make a negative cycle is refused by {@link #cycle}, so that the table never holds a contradiction. Every entry remembers the
 * youngest edge of its path: what lies before and behind it are paths of older edges, from which {@link #path} builds the proof.
 */
final class Network {

    /** No bound known. Small enough that three of them add up without overflow. */
    static final long FREE = Long.MAX_VALUE / 4;

    private final EventIndex events;
    private final int size;
    private final long[] bound;
    private final int[] youngest;
    private final List<Edge> edges;

    /** {@code to − from ≤ bound}, as {@code origin} has it. */
    record Edge(int from, int to, long bound, Constraint origin) {}

    Network(EventIndex events) {
        this.events = events;
        this.size = events.size();
        this.bound = new long[size * size];
        this.youngest = new int[size * size];
        this.edges = new ArrayList<>();
        java.util.Arrays.fill(bound, FREE);
        java.util.Arrays.fill(youngest, -1);
        for (int i = 0; i < size; i++) {
            bound[i * size + i] = 0;
        }
    }

    private Network(Network other) {
        this.events = other.events;
        this.size = other.size;
        this.bound = other.bound.clone();
        this.youngest = other.youngest.clone();
        this.edges = new ArrayList<>(other.edges);
    }

    Network copy() {
        return new Network(this);
    }

    EventIndex events() {
        return events;
    }

    /** The least upper bound of {@code to − from}; {@link #FREE} where there is none. */
    long most(Event from, Event to) {
        return bound[events.of(from) * size + events.of(to)];
    }

    /** The greatest lower bound of {@code to − from}; {@code −FREE} where there is none. */
    long least(Event from, Event to) {
        return -most(to, from);
    }

    /** The negative cycle that the edge would close, the edge itself first; empty where it fits. */
    List<Edge> cycle(Edge edge) {
        if (edge.bound() + bound[edge.to() * size + edge.from()] >= 0) {
            return List.of();
        }
        List<Edge> cycle = new ArrayList<>();
        cycle.add(edge);
        collect(edge.to(), edge.from(), cycle);
        return cycle;
    }

    /** Adds an edge that {@link #cycle} found to fit. */
    void add(Edge edge) {
        if (edge.bound() >= bound[edge.from() * size + edge.to()]) {
            return;
        }
        int id = edges.size();
        edges.add(edge);
        for (int i = 0; i < size; i++) {
            long head = bound[i * size + edge.from()];
            if (head < FREE) {
                relax(i, head + edge.bound(), edge.to(), id);
            }
        }
    }

    private void relax(int row, long head, int via, int id) {
        for (int j = 0; j < size; j++) {
            long tail = bound[via * size + j];
            if (tail < FREE && head + tail < bound[row * size + j]) {
                bound[row * size + j] = head + tail;
                youngest[row * size + j] = id;
            }
        }
    }

    /** The edges that prove {@link #most}, in order from {@code from} to {@code to}; empty where nothing does. */
    List<Edge> path(Event from, Event to) {
        List<Edge> path = new ArrayList<>();
        collect(events.of(from), events.of(to), path);
        return path;
    }

    private void collect(int from, int to, List<Edge> path) {
        int id = youngest[from * size + to];
        if (id < 0) {
            return;
        }
        Edge edge = edges.get(id);
        collect(from, edge.from(), path);
        path.add(edge);
        collect(edge.to(), to, path);
    }
}
