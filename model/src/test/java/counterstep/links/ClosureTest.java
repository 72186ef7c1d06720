package counterstep.links;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.Random;
import org.jgrapht.alg.flow.PushRelabelMFImpl;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.junit.jupiter.api.Test;

/** The cheapest closed set, against trying all sets and against the minimum cut of JGraphT. */
final class ClosureTest {
    private static final int GRAPHS = 3_000;

    /** A random strict order of places with random weights. */
    private static final class Puzzle {
        private final int[] weights;
        private final boolean[][] before;

        Puzzle(int size, long seed) {
            Random random = new Random(seed);
            weights = random.ints(size, -5, 6).toArray();
            before = new boolean[size][size];
            for (int one = 0; one < size; one++) {
                for (int other = one + 1; other < size; other++) {
                    before[one][other] = random.nextInt(3) == 0;
                }
            }
            for (int through = 0; through < size; through++) {
                for (int one = 0; one < size; one++) {
                    for (int other = 0; other < size; other++) {
                        before[one][other] |= before[one][through] && before[through][other];
                    }
                }
            }
        }

        Closure solved() {
            return Closure.cheapest(weights, (earlier, later) -> before[earlier][later]);
        }

        boolean closed(BitSet places) {
            return places.stream()
                    .allMatch(
                            later -> {
                                for (int earlier = 0; earlier < weights.length; earlier++) {
                                    if (before[earlier][later] && !places.get(earlier)) {
                                        return false;
                                    }
                                }
                                return true;
                            });
        }

        int weight(BitSet places) {
            return places.stream().map(place -> weights[place]).sum();
        }
    }

    @Test
    void nothingIsCheaperThanNothingWhereAllCost() {
        Closure closure = Closure.cheapest(new int[] {1, 2, 0}, (earlier, later) -> false);
        assertEquals(0, closure.weight());
        assertTrue(closure.places().isEmpty());
    }

    @Test
    void aGainIsTakenOnlyWithWhatComesBeforeIt() {
        Closure dear = Closure.cheapest(new int[] {3, -2}, (earlier, later) -> earlier < later);
        assertEquals(0, dear.weight());
        Closure cheap = Closure.cheapest(new int[] {1, -2}, (earlier, later) -> earlier < later);
        assertEquals(-1, cheap.weight());
        assertEquals(2, cheap.places().cardinality());
    }

    @Test
    void findsTheCheapestOfAllClosedSetsAndOfTheseTheSmallest() {
        for (long seed = 0; seed < GRAPHS; seed++) {
            Puzzle puzzle = new Puzzle(1 + (int) (seed % 9), seed);
            int least = 0;
            int fewest = 0;
            for (long set = 0; set < 1L << puzzle.weights.length; set++) {
                BitSet places = BitSet.valueOf(new long[] {set});
                if (puzzle.closed(places)) {
                    int weight = puzzle.weight(places);
                    boolean better =
                            weight < least || weight == least && places.cardinality() < fewest;
                    fewest = better ? places.cardinality() : fewest;
                    least = Math.min(least, weight);
                }
            }
            Closure closure = puzzle.solved();
            assertEquals(least, closure.weight(), "seed " + seed);
            assertEquals(least, puzzle.weight(closure.places()), "seed " + seed);
            assertTrue(puzzle.closed(closure.places()), "seed " + seed);
            assertEquals(fewest, closure.places().cardinality(), "seed " + seed);
        }
    }

    /** Push-relabel on the same network, in JGraphT 1.5.3. */
    @Test
    void agreesWithTheCutOfAnotherLibraryOnLargeOnes() {
        for (long seed = 0; seed < 100; seed++) {
            Puzzle puzzle = new Puzzle(40, seed);
            assertEquals(cut(puzzle), puzzle.solved().weight(), "seed " + seed);
        }
    }

    private static int cut(Puzzle puzzle) {
        SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> graph =
                new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
        int size = puzzle.weights.length;
        for (int node = 0; node < size + 2; node++) {
            graph.addVertex(node);
        }
        int gains = 0;
        for (int place = 0; place < size; place++) {
            int weight = puzzle.weights[place];
            if (weight < 0) {
                gains -= weight;
                graph.setEdgeWeight(graph.addEdge(size, place), -weight);
            } else if (weight > 0) {
                graph.setEdgeWeight(graph.addEdge(place, size + 1), weight);
            }
            for (int earlier = 0; earlier < size; earlier++) {
                if (puzzle.before[earlier][place]) {
                    graph.setEdgeWeight(graph.addEdge(place, earlier), 1_000);
                }
            }
        }
        double flow = new PushRelabelMFImpl<>(graph).getMaximumFlowValue(size, size + 1);
        return (int) Math.round(flow) - gains;
    }
}
