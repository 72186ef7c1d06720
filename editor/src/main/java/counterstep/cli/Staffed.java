package counterstep.cli;

import counterstep.crew.CrewPlan;
import counterstep.crew.ToolTime;
import counterstep.links.Precedence;
import counterstep.model.Crew;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/**
 * The work of one crew.
 *
 * @param crew who works
 * @param ofTheDocument whether the document names this crew
 * @param unheld steps in which nobody is left to hold
 * @param plan their timetable; empty where somebody is missing, or the work takes years
 */
record Staffed(Crew crew, boolean ofTheDocument, List<StepId> unheld, Optional<CrewPlan> plan) {
    private static final long SEARCH_SECONDS = 5;

    /** One technician, one with a second where a step asks for one, and the document's crew. */
    static List<Staffed> of(Procedure procedure, Precedence precedence, ToolTime toolTime) {
        Set<Crew> crews = new LinkedHashSet<>();
        crews.add(Crew.ONE);
        if (!CrewPlan.unheld(procedure, Crew.ONE).isEmpty()) {
            crews.add(new Crew(1, true));
        }
        crews.add(procedure.crew());
        return crews.stream().map(crew -> of(procedure, precedence, crew, toolTime)).toList();
    }

    private static Staffed of(
            Procedure procedure, Precedence precedence, Crew crew, ToolTime toolTime) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(SEARCH_SECONDS);
        return new Staffed(
                crew,
                crew.equals(procedure.crew()),
                CrewPlan.unheld(procedure, crew),
                CrewPlan.of(procedure, precedence, crew, toolTime, () -> System.nanoTime() > end));
    }
}
