package counterstep.editor.items;

import counterstep.model.EnergySource;
import counterstep.model.Hold;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Procedure;
import counterstep.model.Setting;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Under which part each other item stands in the register: the first that names it. */
final class ItemHomes {
    private final Procedure procedure;
    private final Map<ItemId, ItemId> homes = new HashMap<>();

    private ItemHomes(Procedure procedure) {
        this.procedure = procedure;
        parts().forEach(this::takeIn);
        for (Item item : procedure.items()) {
            if (item instanceof Setting setting) {
                home(setting.belongsTo()).ifPresent(home -> homes.put(setting.id(), home));
            }
        }
        for (Item item : procedure.items()) {
            if (item instanceof EnergySource source) {
                source.isolatedBy().ifPresent(lead -> homes.put(lead, source.id()));
            }
        }
    }

    /** The items in register order, each with whether it stands under the one before. */
    static List<Map.Entry<Item, Boolean>> order(Procedure procedure) {
        ItemHomes homes = new ItemHomes(procedure);
        List<Map.Entry<Item, Boolean>> order = new ArrayList<>();
        for (Item item : procedure.items()) {
            if (!homes.homes.containsKey(item.id())) {
                order.add(Map.entry(item, false));
                procedure.items().stream()
                        .filter(other -> item.id().equals(homes.homes.get(other.id())))
                        .forEach(other -> order.add(Map.entry(other, true)));
            }
        }
        return order;
    }

    private Stream<Part> parts() {
        return procedure.items().stream().filter(Part.class::isInstance).map(Part.class::cast);
    }

    private void takeIn(Part part) {
        Stream.concat(part.heldBy().stream().map(Hold::holder), part.tetheredBy().stream())
                .filter(named -> !(procedure.item(named) instanceof Part))
                .forEach(named -> homes.putIfAbsent(named, part.id()));
    }

    private Optional<ItemId> home(List<ItemId> belongsTo) {
        return belongsTo.stream()
                .map(named -> procedure.item(named) instanceof Part ? named : homes.get(named))
                .filter(java.util.Objects::nonNull)
                .findFirst();
    }
}
