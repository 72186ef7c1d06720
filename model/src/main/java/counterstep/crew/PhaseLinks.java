package counterstep.crew;

import counterstep.links.Precedence;
import counterstep.model.OrderRule;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What the rule that phases stay in order adds to the links. */
final class PhaseLinks {
    /**
     * One step before another.
     *
     * @param earlier a step that nothing of its phase follows
     * @param later a step of the next phase that nothing of that phase precedes
     */
    record Pair(StepId earlier, StepId later) {}

    private PhaseLinks() {}

    /** None where the document does not set the rule. */
    static List<Pair> in(Procedure procedure, Precedence precedence) {
        List<Pair> pairs = new ArrayList<>();
        if (procedure.orderRules().contains(OrderRule.PHASES_IN_ORDER)) {
            List<StepId> ends = List.of();
            for (Phase phase : Phase.values()) {
                Set<StepId> steps = of(procedure, phase);
                if (!steps.isEmpty()) {
                    List<StepId> begins = begins(steps, precedence);
                    ends.forEach(end -> begins.forEach(begin -> pairs.add(new Pair(end, begin))));
                    ends = ends(steps, precedence);
                }
            }
        }
        return pairs;
    }

    private static Set<StepId> of(Procedure procedure, Phase phase) {
        return procedure.steps().stream()
                .filter(step -> step.phase() == phase)
                .map(Step::id)
                .collect(Collectors.toSet());
    }

    private static List<StepId> ends(Set<StepId> steps, Precedence precedence) {
        return steps.stream()
                .filter(step -> precedence.directlyAfter(step).stream().noneMatch(steps::contains))
                .toList();
    }

    private static List<StepId> begins(Set<StepId> steps, Precedence precedence) {
        Set<StepId> following = new HashSet<>();
        steps.forEach(step -> following.addAll(precedence.directlyAfter(step)));
        return steps.stream().filter(step -> !following.contains(step)).toList();
    }
}
