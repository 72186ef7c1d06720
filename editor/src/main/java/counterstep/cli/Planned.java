package counterstep.cli;

import counterstep.links.Precedence;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.plan.CriticalPath;
import counterstep.toolchange.ToolChanges;
import java.util.List;
import java.util.Optional;

/**
 * What the plan command prints.
 *
 * @param procedure what is planned
 * @param loop one loop in the links, if there is one
 * @param criticalPath times and critical paths; empty with a loop
 * @param toolChanges tool changes in page order
 */
record Planned(
        Procedure procedure,
        Optional<List<StepId>> loop,
        Optional<CriticalPath> criticalPath,
        ToolChanges toolChanges) {
    static Planned of(Procedure procedure) {
        Precedence precedence = Precedence.of(procedure);
        Optional<List<StepId>> loop = precedence.loop();
        return new Planned(
                procedure,
                loop,
                loop.isPresent()
                        ? Optional.empty()
                        : Optional.of(CriticalPath.of(procedure, precedence)),
                ToolChanges.inPageOrder(procedure));
    }
}
