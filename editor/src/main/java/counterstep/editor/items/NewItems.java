package counterstep.editor.items;

import counterstep.edit.FreshIds;
import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.ConnectorKind;
import counterstep.model.EnergySource;
import counterstep.model.Extras;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.JointKind;
import counterstep.model.Latch;
import counterstep.model.Part;
import counterstep.model.Procedure;
import counterstep.model.Setting;
import counterstep.model.SourceKind;
import counterstep.model.Tie;
import counterstep.model.TieKind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Stream;

/** A new item of each kind, with nothing stated but its kind. */
final class NewItems {
    private static final ItemId ANY = new ItemId("x");

    private static final List<Function<ItemId, Item>> KINDS =
            List.of(
                    id -> Part.named(id, "new part"),
                    id -> FastenerSet.screws(id, "new screws", 1, Optional.empty()),
                    id -> new ClipSet(id, "new clips", 1, "", Extras.NONE),
                    id ->
                            new Connector(
                                    id,
                                    "new connector",
                                    1,
                                    ConnectorKind.FLAT_CABLE,
                                    Latch.NONE,
                                    OptionalInt.empty(),
                                    "",
                                    Extras.NONE),
                    id ->
                            new Joint(
                                    id,
                                    "new joint",
                                    JointKind.ADHESIVE,
                                    Optional.empty(),
                                    "",
                                    "",
                                    Extras.NONE),
                    id -> new Tie(id, "new tie", 1, TieKind.CABLE_TIE, "", Extras.NONE),
                    id -> new Setting(id, "new setting", "", "", "", List.of(), "", Extras.NONE),
                    id ->
                            new EnergySource(
                                    id,
                                    "new source",
                                    SourceKind.CELL,
                                    List.of(),
                                    Optional.empty(),
                                    Optional.empty(),
                                    "",
                                    0,
                                    false,
                                    "",
                                    "",
                                    Extras.NONE));

    private NewItems() {}

    /** One sample of each kind, in the order of the menu. */
    static Stream<Item> samples() {
        return KINDS.stream().map(kind -> kind.apply(ANY));
    }

    /** A new item of the kind of {@code sample}, with a fresh id. */
    static Item like(Item sample, Procedure procedure) {
        ItemId id = FreshIds.item(procedure, sample);
        return KINDS.stream()
                .map(kind -> kind.apply(id))
                .filter(item -> item.getClass() == sample.getClass())
                .findFirst()
                .orElseThrow();
    }
}
