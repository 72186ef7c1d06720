package counterstep.toolchange;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;
import java.util.Arrays;
import java.util.function.Function;

/**
 * The planner on the instances of one row, in a process of its own so that its memory can be
 * limited and its first call be seen cold. Prints 'first' and 'heap' with one number and for each
 * instance 'found' with count, bound and milliseconds.
 */
public final class PlannerRun {
    private static final int OTHERS = 1000;
    private static final int WARM_MILLIS = 3000;
    private static final int LONG_MILLIS = 500;
    private static final int REPEATS = 7;

    /** The clock is asked at each so many questions whether to stop. */
    private static final int SELDOM = 64;

    private final BenchmarkRow row;
    private final Clock clock;
    private final double limit;
    private double millis;
    private long heap;

    private PlannerRun(BenchmarkRow row, Clock clock, double limit) {
        this.row = row;
        this.clock = clock == Clock.PROCESSOR ? Clock.THREADS : clock;
        this.limit = limit;
    }

    /** Takes shape, steps, tools, width, clock, limit in milliseconds, number of instances. */
    public static void main(String[] words) {
        PlannerRun run =
                new PlannerRun(
                        BenchmarkRow.read(words),
                        Clock.valueOf(words[4]),
                        Double.parseDouble(words[5]));
        run.all(Integer.parseInt(words[6]));
    }

    private void all(int instances) {
        search(row.instance(OTHERS));
        System.out.println("first " + millis);
        long warm = clock.nanos();
        for (int other = 1; clock.nanos() - warm < WARM_MILLIS * 1e6; other++) {
            search(row.instance(OTHERS + other));
        }
        for (int number = 1; number <= instances; number++) {
            one(row.instance(number));
        }
        System.out.println("heap " + (heap >> 20));
    }

    private void one(ToolGraph graph) {
        long before = cleared();
        FewestTurns found = search(graph);
        heap = Math.max(heap, used(MemoryPoolMXBean::getPeakUsage) - before);
        double[] times = new double[REPEATS];
        Arrays.fill(times, millis);
        for (int run = 1; run < REPEATS && times[0] < LONG_MILLIS; run++) {
            search(graph);
            times[run] = millis;
        }
        Arrays.sort(times);
        System.out.println(
                "found %d %d %s"
                        .formatted(recounted(graph, found), found.atLeast(), times[REPEATS / 2]));
    }

    private FewestTurns search(ToolGraph graph) {
        int[] asked = {0};
        long start = clock.nanos();
        FewestTurns found =
                FewestTurns.of(
                        graph,
                        () -> ++asked[0] % SELDOM == 0 && clock.nanos() - start > limit * 1e6);
        millis = (clock.nanos() - start) / 1e6;
        return found;
    }

    private static int recounted(ToolGraph graph, FewestTurns found) {
        int recounted = Puzzle.of(graph).recounted(found.order());
        if (recounted != found.count()) {
            throw new IllegalStateException(found.count() + " told, but " + recounted);
        }
        return recounted;
    }

    /** What is left after all garbage is gone; from now on peaks count anew. */
    private static long cleared() {
        System.gc();
        ManagementFactory.getMemoryPoolMXBeans().forEach(MemoryPoolMXBean::resetPeakUsage);
        return used(MemoryPoolMXBean::getUsage);
    }

    private static long used(Function<MemoryPoolMXBean, MemoryUsage> usage) {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .mapToLong(pool -> usage.apply(pool).getUsed())
                .sum();
    }
}
