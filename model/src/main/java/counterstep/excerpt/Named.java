package counterstep.excerpt;

import counterstep.model.Action;
import counterstep.model.EnergySource;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepPhoto;
import counterstep.model.SupplyId;
import counterstep.model.ToolId;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The ids that some steps name. */
record Named(Set<ItemId> items, Set<ToolId> tools, Set<SupplyId> supplies, Set<PhotoId> photos) {
    static Named by(List<Step> steps) {
        Named named = new Named(new HashSet<>(), new HashSet<>(), new HashSet<>(), new HashSet<>());
        steps.forEach(named::add);
        return named;
    }

    /**
     * With the energy sources that a connector among them isolates, and those that one among them
     * depends on: no action names these, and without them nothing would ask for their isolation.
     */
    Named withSources(Procedure whole) {
        Set<ItemId> all = new HashSet<>(items);
        boolean more = true;
        while (more) {
            more = false;
            for (Item item : whole.items()) {
                if (item instanceof EnergySource source && belongs(source, whole, all)) {
                    more |= all.add(source.id());
                }
            }
        }
        return new Named(all, tools, supplies, photos);
    }

    private static boolean belongs(EnergySource source, Procedure whole, Set<ItemId> taken) {
        return source.isolatedBy().filter(taken::contains).isPresent()
                || whole.items().stream()
                        .filter(EnergySource.class::isInstance)
                        .map(EnergySource.class::cast)
                        .filter(other -> taken.contains(other.id()))
                        .anyMatch(other -> other.dependsOn().equals(Optional.of(source.id())));
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
