package counterstep.edit;

import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.Part;
import counterstep.model.Setting;
import counterstep.model.Tie;
import java.util.List;

/** An item as it is when it no longer names one that is deleted. */
record WithoutItem(ItemId gone) implements Item.Cases<Item> {
    private List<ItemId> left(List<ItemId> named) {
        return named.stream().filter(id -> !id.equals(gone)).toList();
    }

    @Override
    public Item part(Part part) {
        return part.withFacts(
                part.heldBy().stream().filter(hold -> !hold.holder().equals(gone)).toList(),
                left(part.tetheredBy()),
                left(part.covers()));
    }

    @Override
    public Item fasteners(FastenerSet set) {
        return set;
    }

    @Override
    public Item clips(ClipSet clips) {
        return clips;
    }

    @Override
    public Item tie(Tie tie) {
        return tie;
    }

    @Override
    public Item connector(Connector connector) {
        return connector;
    }

    @Override
    public Item joint(Joint joint) {
        return joint;
    }

    @Override
    public Item setting(Setting setting) {
        return new Setting(
                setting.id(),
                setting.name(),
                setting.unit(),
                setting.tolerance(),
                setting.measuredFrom(),
                left(setting.belongsTo()),
                setting.note(),
                setting.extras());
    }

    @Override
    public Item source(EnergySource source) {
        return new EnergySource(
                source.id(),
                source.name(),
                source.kind(),
                left(source.feeds()),
                source.isolatedBy().filter(id -> !id.equals(gone)),
                source.dependsOn().filter(id -> !id.equals(gone)),
                source.isolation(),
                source.waitSeconds(),
                source.mustProveDead(),
                source.limit(),
                source.note(),
                source.extras());
    }
}
