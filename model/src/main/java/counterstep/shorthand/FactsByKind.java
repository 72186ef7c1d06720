package counterstep.shorthand;

import counterstep.model.ClipSet;
import counterstep.model.Connector;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Joint;
import counterstep.model.JointKind;
import counterstep.model.Part;
import counterstep.model.Setting;
import counterstep.model.Tie;
import counterstep.model.TieKind;
import counterstep.words.TradeWords;

/** Who takes the facts of which kind of item. */
final class FactsByKind implements Item.Cases<FactsOf> {
    private final Named named;
    private final TradeWords trade;

    FactsByKind(Named named) {
        this.named = named;
        this.trade = named.vocabulary().tradeWords();
    }

    @Override
    public FactsOf part(Part part) {
        return new PartFacts(part, named);
    }

    @Override
    public FactsOf fasteners(FastenerSet set) {
        return new FastenerFacts(set, named.vocabulary());
    }

    @Override
    public FactsOf clips(ClipSet clips) {
        return new FactsOf() {
            @Override
            public boolean take(FactWords said) {
                return false;
            }

            @Override
            public Item item(String note) {
                return new ClipSet(
                        clips.id(), clips.name(), clips.quantity(), note, clips.extras());
            }
        };
    }

    @Override
    public FactsOf tie(Tie tie) {
        return new FactsOf() {
            private TieKind kind = tie.kind();

            @Override
            public boolean take(FactWords said) {
                return said.sort("tie", trade)
                        .map(word -> kind = Sort.value(TieKind.values(), TieKind::word, word))
                        .isPresent();
            }

            @Override
            public Item item(String note) {
                return new Tie(tie.id(), tie.name(), tie.quantity(), kind, note, tie.extras());
            }
        };
    }

    @Override
    public FactsOf connector(Connector connector) {
        return new ConnectorFacts(connector, trade);
    }

    @Override
    public FactsOf joint(Joint joint) {
        return new FactsOf() {
            private JointKind kind = joint.kind();

            @Override
            public boolean take(FactWords said) {
                return said.sort("joint", trade)
                        .map(word -> kind = Sort.value(JointKind.values(), JointKind::word, word))
                        .isPresent();
            }

            @Override
            public Item item(String note) {
                return new Joint(
                        joint.id(),
                        joint.name(),
                        kind,
                        joint.release(),
                        joint.made(),
                        note,
                        joint.extras());
            }
        };
    }

    @Override
    public FactsOf setting(Setting setting) {
        return new SettingFacts(setting, named);
    }

    @Override
    public FactsOf source(EnergySource source) {
        return new SourceFacts(source, named);
    }
}
