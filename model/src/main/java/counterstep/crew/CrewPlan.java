package counterstep.crew;

import counterstep.links.Precedence;
import counterstep.model.Crew;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.toolchange.FewestToolChanges;
import counterstep.toolchange.Tooling;
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
        return FewestToolChanges.of(procedure, precedence, Tooling.of(procedure), stopped)
                .flatMap(fewest -> of(procedure, precedence, fewest, crew, toolTime, stopped));
    }

    /**
     * The same where the fewest tool changes of that document are known.
     *
     * @param fewest they
     */
    public static Optional<CrewPlan> of(
            Procedure procedure,
            Precedence precedence,
            FewestToolChanges fewest,
            Crew crew,
            ToolTime toolTime,
            BooleanSupplier stopped) {
        CrewSearch search = new CrewSearch(procedure, precedence, fewest, crew, toolTime);
        return search.isTooLong() || !unheld(procedure, crew).isEmpty()
                ? Optional.empty()
                : Optional.of(search.plan(stopped));
    }

    /** Steps for which somebody must hold or lift, and this crew has nobody left. */
    public static List<StepId> unheld(Procedure procedure, Crew crew) {
        return crew.secondHolds() || crew.technicians() > 1
                ? List.of()
                : procedure.steps().stream().filter(Job::asksForSomebody).map(Step::id).toList();
    }

    /** Whether no timetable of this crew is shorter than the one found. */
    public boolean proved() {
        return atLeast >= shortest.tenths();
    }
}
