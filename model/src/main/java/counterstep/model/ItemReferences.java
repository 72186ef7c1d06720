package counterstep.model;

import java.util.ArrayList;
import java.util.List;

/** The items that an item names. */
final class ItemReferences implements Item.Cases<List<ItemId>> {
    private ItemReferences() {}

    static List<ItemId> of(Item item) {
        return item.match(new ItemReferences());
    }

    @Override
    public List<ItemId> part(Part part) {
        List<ItemId> named = new ArrayList<>();
        part.heldBy().forEach(hold -> named.add(hold.holder()));
        named.addAll(part.tetheredBy());
        named.addAll(part.covers());
        return named;
    }

    @Override
    public List<ItemId> fasteners(FastenerSet set) {
        return List.of();
    }

    @Override
    public List<ItemId> clips(ClipSet clips) {
        return List.of();
    }

    @Override
    public List<ItemId> tie(Tie tie) {
        return List.of();
    }

    @Override
    public List<ItemId> connector(Connector connector) {
        return List.of();
    }

    @Override
    public List<ItemId> joint(Joint joint) {
        return List.of();
    }

    @Override
    public List<ItemId> setting(Setting setting) {
        return setting.belongsTo();
    }

    @Override
    public List<ItemId> source(EnergySource source) {
        List<ItemId> named = new ArrayList<>(source.feeds());
        source.isolatedBy().ifPresent(named::add);
        source.dependsOn().ifPresent(named::add);
        return named;
    }
}
