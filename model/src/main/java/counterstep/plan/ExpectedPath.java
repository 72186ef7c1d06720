package counterstep.plan;

import counterstep.links.Precedence;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The critical path by expected times, and how far its length spreads. Of several as long it is the
 * one that spreads most (common practice), and of these the first in page order. That another path
 * may turn out longer is left out of account, as usual with the method, so that the length is
 * rather too short.
 *
 * @param length expected length and variance
 * @param steps of the path, in order
 */
public record ExpectedPath(ExpectedTime length, List<StepId> steps) {
    private static final int NOBODY = -1;

    /** Copies the list. */
    public ExpectedPath {
        steps = List.copyOf(steps);
    }

    /**
     * Finds it along the links of a document, in time linear in steps and links.
     *
     * @throws IllegalStateException if the links contain a loop
     */
    public static ExpectedPath of(Procedure procedure, Precedence precedence) {
        List<ExpectedTime> times = procedure.steps().stream().map(ExpectedTime::of).toList();
        TwoPasses passes =
                new TwoPasses(times.stream().mapToLong(ExpectedTime::sixths).toArray(), precedence);
        double[] spread = new double[times.size()];
        int[] next = new int[times.size()];
        List<StepId> order = precedence.topological();
        for (int place = order.size() - 1; place >= 0; place--) {
            int page = precedence.page(order.get(place));
            next[page] = widest(passes.criticalAfter(page), spread);
            double after = next[page] == NOBODY ? 0 : spread[next[page]];
            spread[page] = times.get(page).variance() + after;
        }
        int first = widest(starts(passes, precedence), spread);
        List<Integer> path = new ArrayList<>();
        for (int page = first; page != NOBODY; page = next[page]) {
            path.add(page);
        }
        double variance = first == NOBODY ? 0 : spread[first];
        return new ExpectedPath(new ExpectedTime(passes.length(), variance), precedence.ids(path));
    }

    private static List<Integer> starts(TwoPasses passes, Precedence precedence) {
        return IntStream.range(0, precedence.steps().size())
                .filter(page -> precedence.directlyBefore(page).isEmpty())
                .filter(passes::critical)
                .boxed()
                .toList();
    }

    /** The step that begins the widest spread; of equals the first on the page. */
    private static int widest(List<Integer> pages, double[] spread) {
        int best = NOBODY;
        for (int page : pages) {
            boolean wider = best == NOBODY || spread[page] > spread[best];
            best = wider || spread[page] == spread[best] && page < best ? page : best;
        }
        return best;
    }
}
