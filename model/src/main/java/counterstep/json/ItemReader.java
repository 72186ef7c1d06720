package counterstep.json;

import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.EnergySource;
import counterstep.model.Hold;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.Latch;
import counterstep.model.Part;
import counterstep.model.Release;
import counterstep.model.Setting;
import counterstep.model.Tie;
import java.util.OptionalDouble;

/** Reads items; their field {@code kind} says which record they are. */
final class ItemReader {
    private final Known known;

    ItemReader(Known known) {
        this.known = known;
    }

    Item read(Value value) {
        Fields fields = value.fields();
        return switch (fields.need("kind").word(ItemKind.WORDS)) {
            case PART -> part(fields);
            case FASTENER_SET -> FastenerFormat.read(fields);
            case CLIP_SET -> clips(fields);
            case TIE -> tie(fields);
            case CONNECTOR -> connector(fields);
            case JOINT -> joint(fields);
            case SETTING -> setting(fields);
            case ENERGY_SOURCE -> source(fields);
        };
    }

    private static ItemId id(Fields fields) {
        return Known.own(fields, ItemId::new);
    }

    private static String name(Fields fields) {
        return fields.need("name").text();
    }

    private static int quantity(Fields fields) {
        return fields.whole("quantity", 1, "a quantity", 1);
    }

    private Part part(Fields fields) {
        return new Part(
                id(fields),
                name(fields),
                fields.text("number"),
                quantity(fields),
                fields.flag("renewed", false),
                fields.flag("staticSensitive", false),
                fields.list("heldBy", this::hold),
                fields.list("tetheredBy", known::item),
                fields.list("covers", known::item),
                fields.text("note"),
                fields.extras());
    }

    private Hold hold(Value value) {
        if (value.isText()) {
            return Hold.by(known.item(value));
        }
        Fields fields = value.fields();
        return new Hold(
                known.item(fields.need("holder")),
                fields.flag("looseIsEnough", false),
                fields.extras());
    }

    private static ClipSet clips(Fields fields) {
        return new ClipSet(
                id(fields), name(fields), quantity(fields), fields.text("note"), fields.extras());
    }

    private static Tie tie(Fields fields) {
        return new Tie(
                id(fields),
                name(fields),
                quantity(fields),
                fields.need("tie").word(Vocabulary.TIE),
                fields.text("note"),
                fields.extras());
    }

    private static Connector connector(Fields fields) {
        return new Connector(
                id(fields),
                name(fields),
                quantity(fields),
                fields.need("connector").word(Vocabulary.CONNECTOR),
                fields.word("latch", Vocabulary.LATCH, Latch.NONE),
                fields.whole("ratedMatings", 1, "rated matings"),
                fields.text("note"),
                fields.extras());
    }

    private static Joint joint(Fields fields) {
        return new Joint(
                id(fields),
                name(fields),
                fields.need("joint").word(Vocabulary.JOINT),
                fields.plain("release", ItemReader::release),
                fields.text("made"),
                fields.text("note"),
                fields.extras());
    }

    private static Release release(Fields fields) {
        return new Release(
                fields.need("method").word(Vocabulary.RELEASE),
                fields.find("celsius")
                        .map(value -> OptionalDouble.of(value.decimal()))
                        .orElse(OptionalDouble.empty()),
                fields.whole("seconds", 0, "a time"),
                fields.text("limitNearby"));
    }

    private Setting setting(Fields fields) {
        return new Setting(
                id(fields),
                name(fields),
                fields.text("unit"),
                fields.text("tolerance"),
                fields.text("measuredFrom"),
                fields.list("belongsTo", known::item),
                fields.text("note"),
                fields.extras());
    }

    private EnergySource source(Fields fields) {
        return new EnergySource(
                id(fields),
                name(fields),
                fields.need("source").word(Vocabulary.SOURCE),
                fields.list("feeds", known::item),
                fields.find("isolatedBy").map(known::item),
                fields.find("dependsOn").map(known::item),
                fields.text("isolation"),
                fields.whole("waitSeconds", 0, "a wait", 0),
                fields.flag("mustProveDead", false),
                fields.text("limit"),
                fields.text("note"),
                fields.extras());
    }
}
