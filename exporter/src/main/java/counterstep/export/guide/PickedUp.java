package counterstep.export.guide;

import counterstep.export.Print;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.toolchange.PickUp;
import counterstep.toolchange.ToolUse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which tools are picked up where. A worn or standing tool is named at its first use. */
public final class PickedUp {
    private final Map<StepId, List<PickUp>> byStep = new HashMap<>();
    private final Map<StepId, List<ToolTag>> standing = new HashMap<>();

    /** Reads where tools are picked up. */
    public PickedUp(Print print) {
        for (PickUp pickUp : print.changes().pickUps()) {
            byStep.computeIfAbsent(pickUp.step(), step -> new ArrayList<>()).add(pickUp);
        }
        for (ToolUse use : print.tooling().byFirstUse()) {
            if (!use.tool().inHand()) {
                standing.computeIfAbsent(use.steps().get(0), step -> new ArrayList<>())
                        .add(ToolTag.of(use.tool()));
            }
        }
    }

    /** Tools for the first action of a step, and those that stand or are worn from it on. */
    List<ToolTag> atStart(Step step) {
        List<ToolTag> tags = new ArrayList<>(standing.getOrDefault(step.id(), List.of()));
        tags.addAll(at(step, 0));
        return tags;
    }

    /** Tools picked up for a later action, counted from 0. */
    List<ToolTag> atAction(Step step, int action) {
        return action == 0 ? List.of() : at(step, action);
    }

    /** Tools picked up anywhere in a step, and those that stand or are worn from it on. */
    public List<ToolTag> within(Step step) {
        List<ToolTag> tags = new ArrayList<>(standing.getOrDefault(step.id(), List.of()));
        byStep.getOrDefault(step.id(), List.of())
                .forEach(pickUp -> tags.add(ToolTag.of(pickUp.tool())));
        return tags;
    }

    private List<ToolTag> at(Step step, int action) {
        return byStep.getOrDefault(step.id(), List.of()).stream()
                .filter(pickUp -> Math.max(0, pickUp.action()) == action)
                .map(pickUp -> ToolTag.of(pickUp.tool()))
                .toList();
    }
}
