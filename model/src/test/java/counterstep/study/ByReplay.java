package counterstep.study;

import counterstep.model.Action;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.testing.SlowConditions;
import counterstep.testing.SlowLedger;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Does the work in many orders that the links allow, counts with the slow ledger, and looks for a
 * condition that fails or an end that is not as it has to be; then for what was asked by hand.
 * Where none shows the fault is harmless.
 */
final class ByReplay implements Judge {
    private static final long SEED = 20260201;

    /** What decides: the base, what each step does, and the links. */
    private record Case(String base, Set<Step> steps, Set<LinkEnds> links) {}

    private final int random;
    private final Map<Case, Verdict> known = new HashMap<>();

    /** A judge that tries so many random orders beside the systematic ones. */
    ByReplay(int random) {
        this.random = random;
    }

    @Override
    public Verdict of(Base base, Mutant mutant) {
        Procedure procedure = mutant.procedure();
        SomeOrders orders = new SomeOrders(procedure);
        if (orders.ring() || !orders.pageAllowed()) {
            return Verdict.hurts("the page does not keep the links");
        }
        Case same =
                new Case(
                        base.name(),
                        Set.copyOf(procedure.steps()),
                        procedure.links().stream().map(Link::ends).collect(Collectors.toSet()));
        return known.computeIfAbsent(same, fresh -> verdict(base, procedure, orders));
    }

    private Verdict verdict(Base base, Procedure procedure, SomeOrders some) {
        List<List<StepId>> orders = some.orders(random, SEED).distinct().toList();
        Optional<String> failure =
                orders.parallelStream()
                        .flatMap(order -> failure(procedure, order).stream())
                        .findFirst();
        return failure.map(Verdict::hurts)
                .or(() -> byHand(base, procedure, orders).map(Verdict::hurtsByHand))
                .orElseGet(() -> Verdict.harmless("nothing goes wrong", orders.size()));
    }

    private static Optional<String> byHand(
            Base base, Procedure procedure, List<List<StepId>> orders) {
        return base.asked().stream()
                .filter(asked -> asked.broken(procedure, orders))
                .map(Asked::reason)
                .findFirst();
    }

    /** The first condition that fails in an order, or what its end lacks. */
    static Optional<String> failure(Procedure procedure, List<StepId> order) {
        Map<StepId, Step> byId = new HashMap<>();
        procedure.steps().forEach(step -> byId.put(step.id(), step));
        List<Step> steps = order.stream().map(byId::get).toList();
        SlowLedger ledger = new SlowLedger(procedure.draft().steps(steps).procedure());
        int place = 0;
        for (Step step : steps) {
            for (int action = 0; action < step.actions().size(); action++) {
                for (String failure : SlowConditions.failures(ledger, place)) {
                    return Optional.of(step.id() + ": " + failure);
                }
                place++;
            }
        }
        List<Action> actions = steps.stream().flatMap(step -> step.actions().stream()).toList();
        return new Ends(procedure.items(), actions, ledger).unfinished();
    }
}
