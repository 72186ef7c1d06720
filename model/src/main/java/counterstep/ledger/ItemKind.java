package counterstep.ledger;

import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Joint;
import counterstep.model.Part;
import counterstep.model.Setting;
import counterstep.model.Tie;

/** Which columns of the table of verbs an item has. */
enum ItemKind {
    PART,
    FASTENERS,
    /** Screws that stay in their part: only loosened and tightened. */
    CAPTIVE,
    CLIPS,
    TIE,
    CONNECTOR,
    JOINT,
    SETTING,
    SOURCE;

    static ItemKind of(Item item) {
        return item.match(CASES);
    }

    private static final Item.Cases<ItemKind> CASES =
            new Item.Cases<>() {
                @Override
                public ItemKind part(Part part) {
                    return PART;
                }

                @Override
                public ItemKind fasteners(FastenerSet set) {
                    return set.captive() ? CAPTIVE : FASTENERS;
                }

                @Override
                public ItemKind clips(ClipSet clips) {
                    return CLIPS;
                }

                @Override
                public ItemKind tie(Tie tie) {
                    return TIE;
                }

                @Override
                public ItemKind connector(Connector connector) {
                    return CONNECTOR;
                }

                @Override
                public ItemKind joint(Joint joint) {
                    return JOINT;
                }

                @Override
                public ItemKind setting(Setting setting) {
                    return SETTING;
                }

                @Override
                public ItemKind source(EnergySource source) {
                    return SOURCE;
                }
            };
}
