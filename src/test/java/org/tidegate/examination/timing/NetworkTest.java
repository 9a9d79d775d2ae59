package org.tidegate.examination.timing;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jgrapht.Graph;
import org.jgrapht.alg.shortestpath.BellmanFordShortestPath;
import org.jgrapht.alg.shortestpath.NegativeCycleDetectedException;
import org.jgrapht.graph.DefaultDirectedWeightedGraph;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.junit.jupiter.api.Test;
import org.tidegate.finding.Event;

/** The network against a published example and a general graph library. */
class NetworkTest {

    private static final int RANDOM_NETWORKS = 10_000;

    /**
     * Example 1.1 of Dechter, Meiri, Pearl, Temporal constraint networks, Artificial Intelligence 49 (1991): John goes by car, Fred in
     * a car pool; minutes after seven. The shortest distances are those of its table 1, carried from memory.
     */
    @Test
    void findsThePublishedMinimalNetwork() {
        Network network = new Network(new EventIndex(List.of(
                span(0, 1, 10, 20), span(1, 2, 30, 40), span(3, 2, 10, 20), span(3, 4, 40, 50), span(0, 4, 60, 70))));
        add(network, span(0, 1, 10, 20));
        add(network, span(1, 2, 30, 40));
        add(network, span(3, 2, 10, 20));
        add(network, span(3, 4, 40, 50));
        add(network, span(0, 4, 60, 70));
        long[][] published = {
            {0, 20, 50, 30, 70},
            {-10, 0, 40, 20, 60},
            {-40, -30, 0, -10, 30},
            {-20, -10, 20, 0, 50},
            {-60, -50, -20, -40, 0}
        };
        for (int i = 0; i < 5; i++) {
            for (int j = 0; j < 5; j++) {
                assertThat(network.most(Event.photo(i), Event.photo(j)))
                        .as("%d to %d", i, j)
                        .isEqualTo(published[i][j]);
            }
        }
    }

    /** JGraphT (test scope): distances, and which networks hold a negative cycle. A third of them do. */
    @Test
    void agreesWithAGraphLibrary() {
        Random random = new Random(1991);
        int count = (int) (RANDOM_NETWORKS * Share.OF_SIMULATIONS);
        int inconsistent = 0;
        for (int n = 0; n < count; n++) {
            inconsistent += agrees(random, n) ? 0 : 1;
        }
        assertThat(inconsistent).as("inconsistent of %d", count).isBetween(count / 5, count / 2);
    }

    private static boolean agrees(Random random, int n) {
        int size = 5 + random.nextInt(36);
        List<Constraint> clues = randomClues(random, size, n % 3 == 0);
        Graph<Integer, DefaultWeightedEdge> graph = new DefaultDirectedWeightedGraph<>(DefaultWeightedEdge.class);
        for (int i = 0; i < size; i++) {
            graph.addVertex(i);
        }
        for (Constraint c : clues) {
            tighten(graph, c.clue().earlier().index(), c.clue().later().index(), c.most());
            tighten(graph, c.clue().later().index(), c.clue().earlier().index(), -c.least());
        }
        List<Constraint> all = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            all.add(span(i, i, 0, 0));
        }
        all.addAll(clues);
        Network network = new Network(new EventIndex(all));
        boolean consistent = clues.stream().allMatch(c -> add(network, c));
        assertThat(consistent).as("network %d is consistent", n).isEqualTo(consistent(graph, size));
        if (consistent) {
            compare(network, graph, random.nextInt(size), size, n);
        }
        return consistent;
    }

    private static void compare(Network network, Graph<Integer, DefaultWeightedEdge> graph, int from, int size, int n) {
        var paths = new BellmanFordShortestPath<>(graph).getPaths(from);
        for (int to = 0; to < size; to++) {
            long most = network.most(Event.photo(from), Event.photo(to));
            double expected = paths.getWeight(to);
            assertThat(most >= Network.FREE ? Double.POSITIVE_INFINITY : (double) most)
                    .as("network %d, %d to %d", n, from, to)
                    .isEqualTo(expected);
            long proven = network.path(Event.photo(from), Event.photo(to)).stream()
                    .mapToLong(Network.Edge::bound)
                    .sum();
            assertThat(proven).as("path of network %d", n).isEqualTo(most >= Network.FREE ? 0 : most);
        }
    }

    private static boolean consistent(Graph<Integer, DefaultWeightedEdge> graph, int size) {
        int source = size;
        graph.addVertex(source);
        for (int i = 0; i < size; i++) {
            graph.setEdgeWeight(graph.addEdge(source, i), 0);
        }
        try {
            new BellmanFordShortestPath<>(graph).getPaths(source);
            return true;
        } catch (NegativeCycleDetectedException e) {
            return false;
        } finally {
            graph.removeVertex(source);
        }
    }

    private static void tighten(Graph<Integer, DefaultWeightedEdge> graph, int from, int to, long bound) {
        DefaultWeightedEdge edge = graph.getEdge(from, to);
        if (edge == null) {
            graph.setEdgeWeight(graph.addEdge(from, to), bound);
        } else {
            graph.setEdgeWeight(edge, Math.min(bound, graph.getEdgeWeight(edge)));
        }
    }

    /** Spans around hidden true times; {@code lying} ones may miss them. */
    private static List<Constraint> randomClues(Random random, int size, boolean lying) {
        long[] truth = random.longs(size, 0, 10_000).toArray();
        List<Constraint> clues = new ArrayList<>();
        for (int c = 0; c < size + random.nextInt(2 * size); c++) {
            int i = random.nextInt(size);
            int j = (i + 1 + random.nextInt(size - 1)) % size;
            long middle = truth[j] - truth[i] + (lying ? random.nextInt(4_000) - 2_000 : 0);
            clues.add(span(i, j, middle - random.nextInt(500), middle + random.nextInt(500)));
        }
        return clues;
    }

    private static Constraint span(int earlier, int later, long lo, long hi) {
        return new Clues.Source(Clues.NATURE, "span", "span", List.of(), Duration.ZERO, Rank.RECORDED)
                .between(
                        Event.photo(earlier),
                        Event.photo(later),
                        Optional.of(Duration.ofMillis(lo)),
                        Optional.of(Duration.ofMillis(hi)));
    }

    private static boolean add(Network network, Constraint c) {
        for (Optional<Network.Edge> edge :
                List.of(c.upper(network.events(), c.most()), c.lower(network.events(), c.least()))) {
            if (edge.isPresent() && !network.cycle(edge.get()).isEmpty()) {
                return false;
            }
            edge.ifPresent(network::add);
        }
        return true;
    }
}
