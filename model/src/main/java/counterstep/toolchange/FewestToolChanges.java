package counterstep.toolchange;

import counterstep.links.Precedence;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The fewest tool changes over all orders that the links allow and the groups keep, counted as
 * {@link ToolChanges} counts. To find them is hard in general (it contains the shortest common
 * supersequence of many words, Räihä and Ukkonen 1981, from memory), but procedures are narrow: the
 * search looks at turns, what is done with one tool in hand, not at steps.
 */
public final class FewestToolChanges {
    private final Procedure procedure;
    private final ToolJobs jobs;
    private final List<Integer> plan;
    private final int count;
    private final int atLeast;

    private FewestToolChanges(
            Procedure procedure, ToolJobs jobs, List<Integer> plan, int count, int atLeast) {
        this.procedure = procedure;
        this.jobs = jobs;
        this.plan = plan;
        this.count = count;
        this.atLeast = atLeast;
    }

    /**
     * Searches. When it is stopped it answers at once with the best order so far.
     *
     * @param precedence of that document
     * @param tooling of that document
     * @return empty if the links run in a loop or tear a group apart
     */
    public static Optional<FewestToolChanges> of(
            Procedure procedure, Precedence precedence, Tooling tooling, BooleanSupplier stopped) {
        if (precedence.loop().isPresent()) {
            return Optional.empty();
        }
        ToolJobs jobs = ToolJobs.grouped(procedure, precedence, tooling);
        if (jobs.isImpossible()) {
            return Optional.empty();
        }
        FewestTurns found = FewestTurns.of(jobs.graph(), stopped);
        int atLeast =
                jobs.isFree()
                        ? FewestTurns.of(
                                        ToolJobs.single(procedure, precedence, tooling).graph(),
                                        stopped)
                                .atLeast()
                        : found.atLeast();
        return Optional.of(
                new FewestToolChanges(procedure, jobs, found.order(), found.count(), atLeast));
    }

    /** Changes of the best order found. */
    public int count() {
        return count;
    }

    /** No order that the links allow has fewer. */
    public int atLeast() {
        return atLeast;
    }

    /** Whether no order has fewer than the one found. */
    public boolean proved() {
        return count == atLeast;
    }

    /** An order with that many changes. */
    public List<StepId> order() {
        return steps(jobs.withBareHands(plan));
    }

    /**
     * Of the orders with that many changes the one that follows the page longest: at each place the
     * earliest step of the page from which the rest can still be done. When it is stopped the rest
     * may follow it less.
     */
    public List<StepId> nearestToPage(BooleanSupplier stopped) {
        return steps(NearestOrder.of(jobs, plan, count, stopped));
    }

    private List<StepId> steps(List<Integer> order) {
        List<StepId> steps = order.stream().flatMap(job -> jobs.steps(job).stream()).toList();
        int recounted = recount(steps);
        if (recounted != count) {
            throw new IllegalStateException(
                    "an order of " + count + " changes has " + recounted + ": " + steps);
        }
        return steps;
    }

    private int recount(List<StepId> order) {
        Map<StepId, Step> byId =
                procedure.steps().stream().collect(Collectors.toMap(Step::id, Function.identity()));
        Procedure ordered =
                procedure.draft().steps(order.stream().map(byId::get).toList()).procedure();
        return ToolChanges.inPageOrder(ordered).count();
    }
}
