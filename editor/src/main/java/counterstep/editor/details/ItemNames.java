package counterstep.editor.details;

import counterstep.editor.form.PickInput;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Fields that name items of the open procedure: shown by name, kept by id. */
final class ItemNames {
    private final Map<ItemId, String> names = new HashMap<>();

    /** A field for any number of items. */
    PickInput<ItemId> pick(String label, Runnable changed) {
        return new PickInput<>(label, this::name, changed);
    }

    /** The name of an item; its id while the name is not known or empty. */
    String name(ItemId item) {
        String name = names.getOrDefault(item, "");
        return name.isEmpty() ? item.value() : name;
    }

    /** Learns the names, and lists the items that fit. */
    List<ItemId> those(Procedure procedure, Predicate<Item> fit) {
        names.clear();
        procedure.items().forEach(item -> names.put(item.id(), item.name()));
        return procedure.items().stream().filter(fit).map(Item::id).toList();
    }
}
