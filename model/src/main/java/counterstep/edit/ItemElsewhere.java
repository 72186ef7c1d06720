package counterstep.edit;

import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Hold;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.Part;
import counterstep.model.Setting;
import counterstep.model.Tie;
import java.util.stream.Stream;

/** An item under another id, naming others by the ids that they have there. */
record ItemElsewhere(ItemId id, OtherIds ids) implements Item.Cases<Item> {
    @Override
    public Item part(Part part) {
        return new Part(
                id,
                part.name(),
                part.number(),
                part.quantity(),
                part.renewed(),
                part.staticSensitive(),
                part.heldBy().stream().flatMap(this::hold).toList(),
                ids.items(part.tetheredBy()),
                ids.items(part.covers()),
                part.note(),
                part.extras());
    }

    private Stream<Hold> hold(Hold hold) {
        return ids.items().apply(hold.holder()).stream()
                .map(holder -> new Hold(holder, hold.looseIsEnough(), hold.extras()));
    }

    @Override
    public Item fasteners(FastenerSet set) {
        return set.withId(id);
    }

    @Override
    public Item clips(ClipSet clips) {
        return new ClipSet(id, clips.name(), clips.quantity(), clips.note(), clips.extras());
    }

    @Override
    public Item tie(Tie tie) {
        return new Tie(id, tie.name(), tie.quantity(), tie.kind(), tie.note(), tie.extras());
    }

    @Override
    public Item connector(Connector connector) {
        return new Connector(
                id,
                connector.name(),
                connector.quantity(),
                connector.kind(),
                connector.latch(),
                connector.ratedMatings(),
                connector.note(),
                connector.extras());
    }

    @Override
    public Item joint(Joint joint) {
        return new Joint(
                id,
                joint.name(),
                joint.kind(),
                joint.release(),
                joint.made(),
                joint.note(),
                joint.extras());
    }

    @Override
    public Item setting(Setting setting) {
        return new Setting(
                id,
                setting.name(),
                setting.unit(),
                setting.tolerance(),
                setting.measuredFrom(),
                ids.items(setting.belongsTo()),
                setting.note(),
                setting.extras());
    }

    @Override
    public Item source(EnergySource source) {
        return new EnergySource(
                id,
                source.name(),
                source.kind(),
                ids.items(source.feeds()),
                source.isolatedBy().flatMap(ids.items()),
                source.dependsOn().flatMap(ids.items()),
                source.isolation(),
                source.waitSeconds(),
                source.mustProveDead(),
                source.limit(),
                source.note(),
                source.extras());
    }
}
