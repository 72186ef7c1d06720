package counterstep.edit;

import counterstep.model.Item;
import counterstep.model.Procedure;
import java.util.ArrayList;
import java.util.List;

/**
 * Enters an item in the register.
 *
 * @param item the new item, of a fresh id
 */
public record AddItem(Item item) implements Edit {
    @Override
    public String name() {
        return "Add item";
    }

    @Override
    public Procedure apply(Procedure before) {
        List<Item> items = new ArrayList<>(before.items());
        items.add(item);
        return before.draft().items(items).procedure();
    }
}
