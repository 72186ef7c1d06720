package counterstep.ledger;

import counterstep.model.Item;
import counterstep.model.ItemId;

/** Reads an item's state from its counters. */
final class StateOf {
    private StateOf() {}

    static ItemState item(Item item, Tally tally) {
        ItemId id = item.id();
        int all = item.quantity();
        return switch (ItemKind.of(item)) {
            case PART -> {
                int off = tally.get(id, Counter.OFF);
                int away = tally.get(id, Counter.MISSING);
                yield new PartState(all - off, off - away, away, tally.get(id, Counter.ON_MAT));
            }
            case FASTENERS, CAPTIVE -> {
                int loose = tally.get(id, Counter.LOOSE);
                int out = tally.get(id, Counter.MISSING);
                int onMat = tally.get(id, Counter.ON_MAT);
                yield new FastenerState(all - loose - out, loose, out, onMat);
            }
            case CLIPS, TIE, CONNECTOR -> {
                int open = tally.get(id, Counter.OPEN);
                yield new OpenState(all - open, open);
            }
            case JOINT ->
                    new JointState(tally.get(id, Counter.RELEASED), tally.get(id, Counter.LAID));
            case SETTING -> setting(id, tally);
            case SOURCE -> source(id, tally);
        };
    }

    private static SettingState setting(ItemId id, Tally tally) {
        if (tally.get(id, Counter.DISTURBED) > 0) {
            return SettingState.DISTURBED;
        }
        if (tally.get(id, Counter.RESTORED) > 0) {
            return SettingState.RESTORED;
        }
        return tally.get(id, Counter.NOTED) > 0 ? SettingState.NOTED : SettingState.AS_FOUND;
    }

    private static SourceState source(ItemId id, Tally tally) {
        if (tally.get(id, Counter.POWERLESS) == 0) {
            return SourceState.LIVE;
        }
        return tally.get(id, Counter.PROVED) > 0 ? SourceState.PROVED_DEAD : SourceState.ISOLATED;
    }
}
