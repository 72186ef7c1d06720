package counterstep.toolchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The fewest turns against trying every order, written without any of the rules of the search. */
final class FewestTurnsTest {
    private static final int GRAPHS = 25_000;

    /** A random order on up to nine jobs, most of one tool, some of several in turn. */
    private static ToolGraph random(Random random) {
        return random(random, 1 + random.nextInt(9), 1 + random.nextInt(4));
    }

    private static ToolGraph random(Random random, int size, int tools) {
        double density = random.nextDouble() * 0.7;
        int[][] words = new int[size][];
        Places[] before = new Places[size];
        for (int job = 0; job < size; job++) {
            int length = random.nextInt(5) == 0 ? 1 + random.nextInt(3) : 1;
            int[] word = random.ints(length, 0, tools).toArray();
            words[job] = withoutRepeats(word);
            before[job] = Places.below(size);
            for (int one = 0; one < job; one++) {
                if (random.nextDouble() < density) {
                    before[job].add(one);
                    before[job].addAll(before[one]);
                }
            }
        }
        return new ToolGraph(tools, words, before);
    }

    /** Two or three small graphs, all of one before all of the next; some mirror the one before. */
    private static ToolGraph inParts(Random random) {
        List<ToolGraph> parts = new ArrayList<>();
        int size = 0;
        while (parts.size() < 2 || random.nextInt(3) == 0 && parts.size() < 3) {
            boolean mirrored = !parts.isEmpty() && random.nextBoolean();
            ToolGraph part =
                    mirrored
                            ? turned(parts.get(parts.size() - 1))
                            : random(random, 1 + random.nextInt(5), 3);
            parts.add(part);
            size += part.size();
        }
        int[][] words = new int[size][];
        Places[] before = new Places[size];
        int from = 0;
        for (ToolGraph part : parts) {
            for (int job = 0; job < part.size(); job++) {
                words[from + job] = part.word(job);
                before[from + job] = Places.below(size);
                for (int one = 0; one < from + job; one++) {
                    if (one < from || part.before(job).has(one - from)) {
                        before[from + job].add(one);
                    }
                }
            }
            from += part.size();
        }
        return new ToolGraph(3, words, before);
    }

    /** Its mirror image: the last job first. */
    private static ToolGraph turned(ToolGraph graph) {
        int[] fromEnd =
                IntStream.range(0, graph.size()).map(job -> graph.size() - 1 - job).toArray();
        return graph.reversed().only(fromEnd);
    }

    private static int[] withoutRepeats(int[] word) {
        int[] kept = new int[word.length];
        int size = 0;
        for (int tool : word) {
            if (size == 0 || kept[size - 1] != tool) {
                kept[size++] = tool;
            }
        }
        return Arrays.copyOf(kept, size);
    }

    /** Over all sets of done jobs and tools in hand: no rule, no bound. */
    private static int slowly(ToolGraph graph, int done, int hand, Map<Long, Integer> known) {
        if (done == (1 << graph.size()) - 1) {
            return 0;
        }
        long key = (long) done * 16 + hand + 1;
        Integer before = known.get(key);
        if (before != null) {
            return before;
        }
        int least = Integer.MAX_VALUE;
        for (int job = 0; job < graph.size(); job++) {
            if ((done >> job & 1) == 0 && allowed(graph, job, done)) {
                int cost = changes(graph.word(job), hand);
                int rest = slowly(graph, done | 1 << job, graph.last(job), known);
                least = Math.min(least, cost + rest);
            }
        }
        known.put(key, least);
        return least;
    }

    private static boolean allowed(ToolGraph graph, int job, int done) {
        for (int one = 0; one < graph.size(); one++) {
            if (graph.before(job).has(one) && (done >> one & 1) == 0) {
                return false;
            }
        }
        return true;
    }

    private static int changes(int[] word, int hand) {
        int changes = 0;
        int held = hand;
        for (int tool : word) {
            changes += tool == held ? 0 : 1;
            held = tool;
        }
        return changes;
    }

    private static int recounted(ToolGraph graph, List<Integer> order) {
        int changes = 0;
        int held = -1;
        int done = 0;
        for (int job : order) {
            assertTrue(allowed(graph, job, done), () -> job + " comes too early in " + order);
            done |= 1 << job;
            changes += changes(graph.word(job), held);
            held = graph.last(job);
        }
        assertEquals((1 << graph.size()) - 1, done, "each job once");
        return changes;
    }

    @Test
    void noOrderHasFewerAndTheOneFoundHasThatMany() {
        Random random = new Random(6);
        for (int graph = 0; graph < GRAPHS; graph++) {
            ToolGraph jobs = random(random);
            FewestTurns found = FewestTurns.of(jobs, () -> false);
            String which = "graph " + graph + " of seed 6";
            assertEquals(slowly(jobs, 0, -1, new HashMap<>()), found.count(), which);
            assertEquals(found.count(), found.atLeast(), which + " is proved");
            assertEquals(found.count(), recounted(jobs, found.order()), which);
        }
    }

    @Test
    void partsAreJoinedWithoutANeedlessChange() {
        Random random = new Random(8);
        int cut = 0;
        for (int graph = 0; graph < GRAPHS / 5; graph++) {
            ToolGraph jobs = inParts(random);
            FewestTurns found = FewestTurns.of(jobs, () -> false);
            String which = "graph " + graph + " of seed 8";
            assertEquals(slowly(jobs, 0, -1, new HashMap<>()), found.count(), which);
            assertEquals(found.count(), found.atLeast(), which + " is proved");
            assertEquals(found.count(), recounted(jobs, found.order()), which);
            cut += Part.of(jobs, () -> false).size() > 1 ? 1 : 0;
        }
        assertTrue(cut > 1000, "most fall into parts");
    }

    /** From its end a graph needs as many turns; the two searches share no branch. */
    @Test
    void teardownsOfAHundredJobsAreProvedAndNeedAsManyFromTheirEnd() {
        for (int seed = 0; seed < 40; seed++) {
            ToolGraph jobs =
                    switch (seed % 3) {
                        case 0 -> TeardownShapes.mirrored(100, 6, 6, seed);
                        case 1 -> TeardownShapes.entwined(100, 6, 6, seed);
                        default -> TeardownShapes.half(100, 6, 6, seed);
                    };
            FewestTurns found = FewestTurns.of(jobs, () -> false);
            FewestTurns fromEnd = FewestTurns.of(jobs.reversed(), () -> false);
            assertEquals(found.count(), found.atLeast(), "seed " + seed);
            assertEquals(found.count(), fromEnd.count(), "seed " + seed);
            assertEquals(found.count(), turns(jobs, found.order()), "seed " + seed);
        }
    }

    private static int turns(ToolGraph graph, List<Integer> order) {
        Places done = Places.below(graph.size());
        int changes = 0;
        int held = -1;
        for (int job : order) {
            assertTrue(done.hasAll(graph.before(job)), () -> job + " comes too early");
            done.add(job);
            changes += changes(graph.word(job), held);
            held = graph.last(job);
        }
        assertEquals(graph.size(), done.size(), "each job once");
        return changes;
    }

    @Test
    void aSearchThatIsStoppedClaimsNoProof() {
        Random random = new Random(7);
        int open = 0;
        for (int graph = 0; graph < 500; graph++) {
            ToolGraph jobs = random(random);
            FewestTurns found = FewestTurns.of(jobs, () -> true);
            int least = slowly(jobs, 0, -1, new HashMap<>());
            assertTrue(found.atLeast() <= least && least <= found.count());
            assertEquals(found.count(), recounted(jobs, found.order()));
            open += found.atLeast() < found.count() ? 1 : 0;
        }
        assertTrue(open > 0, "some need a search");
    }
}
