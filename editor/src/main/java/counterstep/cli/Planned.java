package counterstep.cli;

import counterstep.crew.ToolTime;
import counterstep.links.OrderDemands;
import counterstep.links.Precedence;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.plan.CriticalPath;
import counterstep.plan.ExpectedPath;
import counterstep.toolchange.FewestToolChanges;
import counterstep.toolchange.ToolChanges;
import counterstep.toolchange.Tooling;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/**
 * What the plan command prints.
 *
 * @param procedure what is planned
 * @param estimated what of its times is measured and what is estimated
 * @param loop one loop in the links, if there is one
 * @param criticalPath times and critical paths; empty with a loop
 * @param expected the critical path by three-point estimates; empty with a loop
 * @param toolChanges tool changes in page order
 * @param demands what is asked of every order beside the links
 * @param best the order of fewest tool changes nearest to the page; empty if no order keeps all
 *     that is asked
 * @param toolTime what a tool change takes
 * @param crews one technician alone, with a second who holds, the crew of the document; none with a
 *     loop
 */
record Planned(
        Procedure procedure,
        Estimated estimated,
        Optional<List<StepId>> loop,
        Optional<CriticalPath> criticalPath,
        Optional<ExpectedPath> expected,
        ToolChanges toolChanges,
        OrderDemands demands,
        Optional<BestOrder> best,
        ToolTime toolTime,
        List<Staffed> crews) {
    private static final long SEARCH_SECONDS = 10;

    /**
     * The fewest tool changes.
     *
     * @param fewest how many, and whether that is proved
     * @param order the steps
     */
    record BestOrder(FewestToolChanges fewest, List<StepId> order) {}

    static Planned of(Estimated estimated, ToolTime toolTime) {
        Procedure procedure = estimated.planned();
        Precedence precedence = Precedence.of(procedure);
        Optional<List<StepId>> loop = precedence.loop();
        Optional<Precedence> timed = Optional.of(precedence).filter(links -> loop.isEmpty());
        return new Planned(
                procedure,
                estimated,
                loop,
                timed.map(links -> CriticalPath.of(procedure, links)),
                timed.map(links -> ExpectedPath.of(procedure, links)),
                ToolChanges.inPageOrder(procedure),
                OrderDemands.of(procedure, precedence),
                best(procedure, precedence),
                toolTime,
                loop.isPresent() ? List.of() : Staffed.of(procedure, precedence, toolTime));
    }

    private static Optional<BestOrder> best(Procedure procedure, Precedence precedence) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(SEARCH_SECONDS);
        BooleanSupplier late = () -> System.nanoTime() > end;
        return FewestToolChanges.of(procedure, precedence, Tooling.of(procedure), late)
                .map(fewest -> new BestOrder(fewest, fewest.nearestToPage(late)));
    }
}
