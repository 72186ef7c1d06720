package counterstep.edit;

import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Joint;
import counterstep.model.Part;
import counterstep.model.Setting;
import counterstep.model.Tie;

/** The first letter of an item's id: one for each kind. */
final class ItemLetter implements Item.Cases<String> {
    static final ItemLetter INSTANCE = new ItemLetter();

    private ItemLetter() {}

    @Override
    public String part(Part part) {
        return "p";
    }

    @Override
    public String fasteners(FastenerSet set) {
        return "f";
    }

    @Override
    public String clips(ClipSet clips) {
        return "k";
    }

    @Override
    public String tie(Tie tie) {
        return "y";
    }

    @Override
    public String connector(Connector connector) {
        return "c";
    }

    @Override
    public String joint(Joint joint) {
        return "j";
    }

    @Override
    public String setting(Setting setting) {
        return "g";
    }

    @Override
    public String source(EnergySource source) {
        return "e";
    }
}
