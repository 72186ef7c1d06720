package counterstep.json;

import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Hold;
import counterstep.model.Item;
import counterstep.model.Joint;
import counterstep.model.Latch;
import counterstep.model.Part;
import counterstep.model.Release;
import counterstep.model.Setting;
import counterstep.model.Tie;
import java.util.Map;

/** Writes items. */
final class ItemWriter implements Item.Cases<Map<String, Object>> {
    static Map<String, Object> write(Item item) {
        return item.match(new ItemWriter());
    }

    private static Out start(ItemKind kind, Item item) {
        return new Out()
                .put("kind", kind.word())
                .put("id", item.id().value())
                .put("name", item.name());
    }

    private static Map<String, Object> end(Out out, Item item, String... plainValues) {
        return out.text("note", item.note()).with(item.extras(), plainValues);
    }

    @Override
    public Map<String, Object> part(Part part) {
        Out out =
                start(ItemKind.PART, part)
                        .text("number", part.number())
                        .whole("quantity", part.quantity(), 1)
                        .flag("renewed", part.renewed(), false)
                        .flag("staticSensitive", part.staticSensitive(), false)
                        .list("heldBy", part.heldBy(), ItemWriter::hold)
                        .ids("tetheredBy", part.tetheredBy())
                        .ids("covers", part.covers());
        return end(out, part);
    }

    /** A plain hold is the id alone. */
    private static Object hold(Hold hold) {
        if (hold.equals(Hold.by(hold.holder()))) {
            return hold.holder().value();
        }
        return new Out()
                .put("holder", hold.holder().value())
                .flag("looseIsEnough", hold.looseIsEnough(), false)
                .with(hold.extras());
    }

    @Override
    public Map<String, Object> fasteners(FastenerSet set) {
        return FastenerFormat.write(set, start(ItemKind.FASTENER_SET, set));
    }

    @Override
    public Map<String, Object> clips(ClipSet clips) {
        return end(start(ItemKind.CLIP_SET, clips).whole("quantity", clips.quantity(), 1), clips);
    }

    @Override
    public Map<String, Object> tie(Tie tie) {
        Out out =
                start(ItemKind.TIE, tie)
                        .whole("quantity", tie.quantity(), 1)
                        .put("tie", tie.kind().word());
        return end(out, tie);
    }

    @Override
    public Map<String, Object> connector(Connector connector) {
        Out out =
                start(ItemKind.CONNECTOR, connector)
                        .whole("quantity", connector.quantity(), 1)
                        .put("connector", connector.kind().word())
                        .word("latch", connector.latch(), Latch.NONE, Latch::word)
                        .whole("ratedMatings", connector.ratedMatings());
        return end(out, connector);
    }

    @Override
    public Map<String, Object> joint(Joint joint) {
        Out out = start(ItemKind.JOINT, joint).put("joint", joint.kind().word());
        joint.release()
                .ifPresent(release -> out.plain("release", release(release), joint.extras()));
        return end(out.text("made", joint.made()), joint, "release");
    }

    private static Map<String, Object> release(Release release) {
        return new Out()
                .put("method", release.method().word())
                .decimal("celsius", release.celsius())
                .whole("seconds", release.seconds())
                .text("limitNearby", release.limitNearby())
                .fields();
    }

    @Override
    public Map<String, Object> setting(Setting setting) {
        Out out =
                start(ItemKind.SETTING, setting)
                        .text("unit", setting.unit())
                        .text("tolerance", setting.tolerance())
                        .text("measuredFrom", setting.measuredFrom())
                        .ids("belongsTo", setting.belongsTo());
        return end(out, setting);
    }

    @Override
    public Map<String, Object> source(EnergySource source) {
        Out out =
                start(ItemKind.ENERGY_SOURCE, source)
                        .put("source", source.kind().word())
                        .ids("feeds", source.feeds())
                        .id("isolatedBy", source.isolatedBy())
                        .id("dependsOn", source.dependsOn())
                        .text("isolation", source.isolation())
                        .whole("waitSeconds", source.waitSeconds(), 0)
                        .flag("mustProveDead", source.mustProveDead(), false)
                        .text("limit", source.limit());
        return end(out, source);
    }
}
