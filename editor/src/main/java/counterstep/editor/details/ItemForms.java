package counterstep.editor.details;

import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Joint;
import counterstep.model.Part;
import counterstep.model.Setting;
import counterstep.model.Tie;

/**
 * The form for each kind of item.
 *
 * @param changed run at each change of a field
 */
record ItemForms(Runnable changed) implements Item.Cases<ItemForm<? extends Item>> {
    @Override
    public ItemForm<? extends Item> part(Part part) {
        return new PartForm(part, changed).laid();
    }

    @Override
    public ItemForm<? extends Item> fasteners(FastenerSet set) {
        return new FastenersForm(set, changed).laid();
    }

    @Override
    public ItemForm<? extends Item> clips(ClipSet clips) {
        return new ClipsForm(clips, changed).laid();
    }

    @Override
    public ItemForm<? extends Item> tie(Tie tie) {
        return new TieForm(tie, changed).laid();
    }

    @Override
    public ItemForm<? extends Item> connector(Connector connector) {
        return new ConnectorForm(connector, changed).laid();
    }

    @Override
    public ItemForm<? extends Item> joint(Joint joint) {
        return new JointForm(joint, changed).laid();
    }

    @Override
    public ItemForm<? extends Item> setting(Setting setting) {
        return new SettingForm(setting, changed).laid();
    }

    @Override
    public ItemForm<? extends Item> source(EnergySource source) {
        return new SourceForm(source, changed).laid();
    }
}
