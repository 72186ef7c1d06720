package counterstep.toolchange;

import counterstep.links.OrderDemands;
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
 * The fewest tool changes over all orders that the links, the groups and the rules of the document
 * allow, counted as {@link ToolChanges} counts. To find them is hard in general (it contains the
 * shortest common supersequence of many words, Räihä and Ukkonen 1981, from memory), but procedures
 * are narrow: the search looks at turns, what is done with one tool in hand, not at steps.
 */
public final class FewestToolChanges {
    private final Procedure procedure;
    private final OrderDemands demands;
    private final ToolJobs jobs;
    private final List<Integer> plan;
    private final int count;
    private final int atLeast;

    private FewestToolChanges(
            Procedure procedure,
            OrderDemands demands,
            ToolJobs jobs,
            FewestTurns best,
            int atLeast) {
        this.procedure = procedure;
        this.demands = demands;
        this.jobs = jobs;
        plan = best.order();
        count = best.count();
        this.atLeast = atLeast;
    }

    /**
     * Searches. When it is stopped it answers at once with the best order so far.
     *
     * @param precedence of that document
     * @param tooling of that document
     * @return empty if no order keeps all that is asked: the links run in a loop, or tear apart
     *     what stays together
     */
    public static Optional<FewestToolChanges> of(
            Procedure procedure, Precedence precedence, Tooling tooling, BooleanSupplier stopped) {
        if (precedence.loop().isPresent()) {
            return Optional.empty();
        }
        OrderDemands demands = OrderDemands.of(procedure, precedence);
        Choices choices = Choices.of(demands, new ToolWords(procedure, tooling));
        return choices.isImpossible()
                ? Optional.empty()
                : Optional.of(best(procedure, demands, choices, stopped));
    }

    private static FewestToolChanges best(
            Procedure procedure, OrderDemands demands, Choices choices, BooleanSupplier stopped) {
        ToolJobs jobs = choices.all().get(0);
        FewestTurns best = FewestTurns.of(jobs.graph(), stopped);
        int atLeast = best.atLeast();
        boolean all = choices.complete();
        if (choices.all().size() > 1 || !all) {
            int single = FewestTurns.of(choices.single().graph(), stopped).atLeast();
            for (ToolJobs other : choices.all().subList(1, choices.all().size())) {
                if (best.count() > single && !stopped.getAsBoolean()) {
                    FewestTurns found = FewestTurns.of(other.graph(), stopped);
                    atLeast = Math.min(atLeast, found.atLeast());
                    jobs = found.count() < best.count() ? other : jobs;
                    best = found.count() < best.count() ? found : best;
                } else {
                    all = false;
                }
            }
            atLeast = all ? Math.max(atLeast, single) : single;
        }
        return new FewestToolChanges(procedure, demands, jobs, best, atLeast);
    }

    /** What every order had to keep. */
    public OrderDemands demands() {
        return demands;
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
        if (!demands.keptIn(steps)) {
            throw new IllegalStateException("an order that parts what stays together: " + steps);
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
