package counterstep.crew;

import counterstep.links.Precedence;
import counterstep.model.Crew;
import counterstep.model.GroupRule;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepGroup;
import counterstep.model.StepId;
import counterstep.timetable.Project;
import counterstep.timetable.ShortestTimetable;
import counterstep.timetable.Timetable;
import counterstep.toolchange.FewestToolChanges;
import counterstep.toolchange.Tooling;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * The shortest timetable of a document for a crew.
 *
 * @param shortest the shortest found over all orders that the links allow and the groups keep
 * @param atLeast no timetable of this crew is shorter, in tenths of a second
 * @param downThePage the one in page order, other steps going on beside the waits; empty where page
 *     order breaks a link
 */
public record CrewPlan(CrewTimetable shortest, int atLeast, Optional<CrewTimetable> downThePage) {
    private static final long LONGEST = Integer.MAX_VALUE / 8;

    /**
     * Searches. When it is stopped it answers at once with the best so far.
     *
     * @param precedence of that document
     * @param crew who works; the document's or another
     * @param toolTime what a tool change takes
     * @return empty if the links run in a loop or tear a group apart, if somebody is missing who
     *     holds ({@link #unheld}), or if the work takes years
     */
    public static Optional<CrewPlan> of(
            Procedure procedure,
            Precedence precedence,
            Crew crew,
            ToolTime toolTime,
            BooleanSupplier stopped) {
        if (precedence.loop().isPresent() || !unheld(procedure, crew).isEmpty()) {
            return Optional.empty();
        }
        Jobs jobs = new Jobs(procedure, precedence, toolTime, true);
        long most = jobs.length() + (long) toolTime.tenths() * procedure.steps().size();
        if (most > LONGEST) {
            return Optional.empty();
        }
        return FewestToolChanges.of(procedure, precedence, Tooling.of(procedure), stopped)
                .map(fewest -> plan(procedure, precedence, jobs, fewest, crew, toolTime, stopped));
    }

    /** Steps for which somebody must hold or lift, and this crew has nobody left. */
    public static List<StepId> unheld(Procedure procedure, Crew crew) {
        return crew.secondHolds() || crew.technicians() > 1
                ? List.of()
                : procedure.steps().stream().filter(Job::asksForSomebody).map(Step::id).toList();
    }

    private static CrewPlan plan(
            Procedure procedure,
            Precedence precedence,
            Jobs jobs,
            FewestToolChanges fewest,
            Crew crew,
            ToolTime toolTime,
            BooleanSupplier stopped) {
        Project project = jobs.project(crew, toolTime, fewest.atLeast());
        List<Integer> page = jobs.inOrderOf(precedence.steps());
        List<List<Integer>> orders = new ArrayList<>();
        orders.add(jobs.inOrderOf(fewest.order()));
        Optional<Timetable> down =
                jobs.keeps(page) ? Optional.of(Timetable.inOrder(project, page)) : Optional.empty();
        down.ifPresent(unused -> orders.add(page));
        ShortestTimetable found = ShortestTimetable.of(project, orders, stopped);
        Told told = new Told(jobs, crew, toolTime);
        return new CrewPlan(
                told.timetable(found.best()),
                Math.min(
                        found.atLeast(),
                        freed(procedure, precedence, crew, toolTime, fewest, stopped)),
                down.map(told::timetable));
    }

    /** A group whose inside order was chosen may be shorter in another: no less than without it. */
    private static int freed(
            Procedure procedure,
            Precedence precedence,
            Crew crew,
            ToolTime toolTime,
            FewestToolChanges fewest,
            BooleanSupplier stopped) {
        boolean free =
                procedure.groups().stream()
                        .filter(group -> group.rule() == GroupRule.TOGETHER)
                        .anyMatch(group -> !isChain(group, precedence));
        if (!free) {
            return Integer.MAX_VALUE;
        }
        Project single =
                new Jobs(procedure, precedence, toolTime, false)
                        .project(crew, toolTime, fewest.atLeast());
        return ShortestTimetable.of(single, stopped).atLeast();
    }

    private static boolean isChain(StepGroup group, Precedence precedence) {
        for (StepId one : group.steps()) {
            for (StepId other : group.steps()) {
                if (!one.equals(other)
                        && !precedence.before(one, other)
                        && !precedence.before(other, one)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether no timetable of this crew is shorter than the one found. */
    public boolean proved() {
        return atLeast >= shortest.tenths();
    }
}
