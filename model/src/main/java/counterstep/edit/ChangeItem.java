package counterstep.edit;

import counterstep.model.Item;
import counterstep.model.Procedure;

/**
 * Exchanges an item for a changed one of the same id.
 *
 * @param changed the item as it shall be
 */
public record ChangeItem(Item changed) implements Edit {
    @Override
    public String name() {
        return "Change item";
    }

    @Override
    public Procedure apply(Procedure before) {
        before.item(changed.id());
        return before.draft()
                .items(
                        before.items().stream()
                                .map(item -> item.id().equals(changed.id()) ? changed : item)
                                .toList())
                .procedure();
    }
}
