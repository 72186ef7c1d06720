package counterstep.check.safety;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.model.EnergySource;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.Release;
import counterstep.model.Severity;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A cell that is heated can burn: with one in the device, heat needs a limit for it. */
final class HeatWithoutLimit implements Check {
    @Override
    public About about() {
        return new About(
                "heat-without-limit",
                Severity.ERROR,
                "A joint is heated with a cell in the device, and no limit for the cell is stated.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        HeatWork heat = HeatWork.of(facts);
        Map<Joint, List<StepId>> faults = new LinkedHashMap<>();
        for (Step step : heat.steps()) {
            if (!heat.cellsIn(step.id()).isEmpty()) {
                step.actions().stream()
                        .flatMap(action -> heat.released(action).stream())
                        .filter(HeatWithoutLimit::unlimited)
                        .forEach(joint -> steps(faults, joint).add(step.id()));
            }
        }
        return faults.entrySet().stream()
                .map(fault -> finding(facts, heat, fault.getKey(), fault.getValue()));
    }

    private static List<StepId> steps(Map<Joint, List<StepId>> faults, Joint joint) {
        return faults.computeIfAbsent(joint, fresh -> new ArrayList<>());
    }

    private static boolean unlimited(Joint joint) {
        return joint.release().map(Release::limitNearby).orElse("").isBlank();
    }

    private Finding finding(Facts facts, HeatWork heat, Joint joint, List<StepId> steps) {
        List<ItemId> cells = heat.cellsIn(steps.get(0)).stream().map(EnergySource::id).toList();
        String message =
                "%s %s %s with %s in the device: how warm may it get there?"
                        .formatted(
                                facts.phrases().steps(steps),
                                steps.size() == 1 ? "heats" : "heat",
                                joint.name(),
                                facts.phrases().names(cells));
        List<ItemId> items = Stream.concat(Stream.of(joint.id()), cells.stream()).toList();
        return about().finding(Phrases.sentence(message), steps, items);
    }
}
