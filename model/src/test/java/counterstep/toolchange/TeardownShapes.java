package counterstep.toolchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Graphs shaped as teardowns are: a cover comes off first, then subassemblies side by side, each a
 * chain with here and there a few jobs that may be done in any order; and, mirrored, then all of it
 * back in the reverse order. Jobs take one tool each, most often that of the job before or another
 * at random. The same numbers give the same graph.
 */
final class TeardownShapes {
    private static final int COVER = 4;

    private final Random random;
    private final int tools;
    private final List<int[]> links = new ArrayList<>();
    private final List<Integer> toolOf = new ArrayList<>();

    private TeardownShapes(int tools, long seed) {
        this.tools = tools;
        this.random = new Random(seed);
    }

    /** Teardown alone. */
    static ToolGraph half(int jobs, int tools, int width, long seed) {
        TeardownShapes shape = new TeardownShapes(tools, seed);
        shape.teardown(jobs, width);
        return shape.graph();
    }

    /** Teardown, then its mirror image: what is put back waits until all is apart. */
    static ToolGraph mirrored(int jobs, int tools, int width, long seed) {
        TeardownShapes shape = mirror(jobs, tools, width, seed);
        int down = jobs / 2;
        for (int job = 0; job < down; job++) {
            for (int back = down; back < 2 * down; back++) {
                shape.links.add(new int[] {job, back});
            }
        }
        return shape.graph();
    }

    /** The same, but each job is put back as soon as what came off after it is. */
    static ToolGraph entwined(int jobs, int tools, int width, long seed) {
        return mirror(jobs, tools, width, seed).graph();
    }

    private static TeardownShapes mirror(int jobs, int tools, int width, long seed) {
        TeardownShapes shape = new TeardownShapes(tools, seed);
        int down = jobs / 2;
        shape.teardown(down, width);
        for (int[] link : List.copyOf(shape.links)) {
            shape.links.add(new int[] {2 * down - 1 - link[1], 2 * down - 1 - link[0]});
        }
        for (int job = down - 1; job >= 0; job--) {
            shape.toolOf.add(shape.toolOf.get(job));
            shape.links.add(new int[] {job, 2 * down - 1 - job});
        }
        return shape;
    }

    private void teardown(int jobs, int width) {
        toolOf.add(random.nextInt(tools));
        int cover = Math.min(COVER, jobs);
        for (int job = 1; job < cover; job++) {
            links.add(new int[] {job - 1, job});
            toolOf.add(toolAfter(job - 1));
        }
        int[] last = new int[width];
        int[] fork = new int[width];
        java.util.Arrays.fill(last, cover - 1);
        java.util.Arrays.fill(fork, cover - 1);
        for (int job = cover; job < jobs; job++) {
            int at = random.nextInt(width);
            toolOf.add(toolAfter(last[at]));
            if (random.nextInt(4) == 0) {
                links.add(new int[] {fork[at], job}); // beside the one before, not after it
            } else {
                links.add(new int[] {last[at], job});
                fork[at] = last[at];
                last[at] = job;
            }
        }
    }

    /** A technician plans a little too: half of the jobs go on with the tool of the one before. */
    private int toolAfter(int job) {
        return random.nextBoolean() ? toolOf.get(job) : random.nextInt(tools);
    }

    private ToolGraph graph() {
        int size = toolOf.size();
        int[][] words = new int[size][];
        Places[] before = new Places[size];
        for (int job = 0; job < size; job++) {
            words[job] = new int[] {toolOf.get(job)};
            before[job] = Places.below(size);
        }
        links.sort(java.util.Comparator.comparingInt(link -> link[1]));
        for (int[] link : links) {
            before[link[1]].add(link[0]);
            before[link[1]].addAll(before[link[0]]);
        }
        return new ToolGraph(tools, words, before);
    }
}
