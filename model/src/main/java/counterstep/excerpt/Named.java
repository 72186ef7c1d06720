package counterstep.excerpt;

import counterstep.model.Action;
import counterstep.model.ItemId;
import counterstep.model.PhotoId;
import counterstep.model.Step;
import counterstep.model.StepPhoto;
import counterstep.model.SupplyId;
import counterstep.model.ToolId;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The ids that some steps name. */
record Named(Set<ItemId> items, Set<ToolId> tools, Set<SupplyId> supplies, Set<PhotoId> photos) {
    static Named by(List<Step> steps) {
        Named named = new Named(new HashSet<>(), new HashSet<>(), new HashSet<>(), new HashSet<>());
        steps.forEach(named::add);
        return named;
    }

    private void add(Step step) {
        step.tool().ifPresent(tools::add);
        for (Action action : step.actions()) {
            action.item().ifPresent(items::add);
            action.tool().ifPresent(tools::add);
            action.supplies().forEach(use -> supplies.add(use.supply()));
        }
        step.hazards().forEach(hazard -> items.addAll(hazard.items()));
        for (StepPhoto shown : step.photos()) {
            photos.add(shown.photo());
            shown.callouts().forEach(callout -> callout.item().ifPresent(items::add));
        }
    }
}
