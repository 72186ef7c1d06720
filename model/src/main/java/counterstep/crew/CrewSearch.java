package counterstep.crew;

import counterstep.links.Precedence;
import counterstep.model.Crew;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.timetable.Project;
import counterstep.timetable.ShortestTimetable;
import counterstep.timetable.Timetable;
import counterstep.toolchange.FewestToolChanges;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * The search for one crew. Steps in company are one job, done inside as in the order of fewest tool
 * changes.
 */
final class CrewSearch {
    private static final long LONGEST = Integer.MAX_VALUE / 8;

    private final Procedure procedure;
    private final Precedence precedence;
    private final FewestToolChanges fewest;
    private final Crew crew;
    private final ToolTime toolTime;
    private final List<StepId> order;
    private final InCompany company;
    private final Jobs jobs;

    CrewSearch(
            Procedure procedure,
            Precedence precedence,
            FewestToolChanges fewest,
            Crew crew,
            ToolTime toolTime) {
        this.procedure = procedure;
        this.precedence = precedence;
        this.fewest = fewest;
        this.crew = crew;
        this.toolTime = toolTime;
        order = fewest.order();
        company = new InCompany(fewest.demands(), order, order);
        jobs = new Jobs(procedure, precedence, toolTime, company.lots());
    }

    /** Whether the work takes years. */
    boolean isTooLong() {
        return jobs.length() + (long) toolTime.tenths() * procedure.steps().size() > LONGEST;
    }

    CrewPlan plan(BooleanSupplier stopped) {
        Project project = project(jobs);
        List<List<Integer>> orders = new ArrayList<>(List.of(jobs.inOrderOf(order)));
        List<Integer> page = jobs.inOrderOf(precedence.steps());
        if (jobs.keeps(page)) {
            orders.add(page);
        }
        ShortestTimetable found = ShortestTimetable.of(project, orders, stopped);
        CrewTimetable best = new Told(jobs, crew, toolTime).timetable(found.best());
        int atLeast = found.atLeast();
        if (company.isChosen()) {
            // another order inside may be shorter, but not than each step for itself
            Jobs single = new Jobs(procedure, precedence, toolTime, List.of());
            atLeast = Math.min(atLeast, ShortestTimetable.of(project(single), stopped).atLeast());
        }
        Optional<CrewTimetable> down = downThePage();
        CrewTimetable shortest = down.filter(other -> other.tenths() < best.tenths()).orElse(best);
        return new CrewPlan(shortest, atLeast, down);
    }

    private Project project(Jobs some) {
        return some.project(crew, toolTime, fewest.atLeast());
    }

    /** In company, too, steps are done in page order where that keeps all that is asked. */
    private Optional<CrewTimetable> downThePage() {
        InCompany paged = new InCompany(fewest.demands(), precedence.topological(), order);
        Jobs down = new Jobs(procedure, precedence, toolTime, paged.lots());
        List<Integer> page = down.inOrderOf(precedence.steps());
        return down.keeps(page)
                ? Optional.of(
                        new Told(down, crew, toolTime)
                                .timetable(Timetable.inOrder(project(down), page)))
                : Optional.empty();
    }
}
