package counterstep.ledger;

import counterstep.model.Item;

/** Reads an item's state from its counters. */
final class StateOf {
    private StateOf() {}

    static ItemState item(Item item, Tally tally) {
        int[] row = tally.row(item.id());
        int all = item.quantity();
        return switch (ItemKind.of(item)) {
            case PART -> {
                int off = of(row, Counter.OFF);
                int away = of(row, Counter.MISSING);
                yield new PartState(all - off, off - away, away, of(row, Counter.ON_MAT));
            }
            case FASTENERS, CAPTIVE -> {
                int loose = of(row, Counter.LOOSE);
                int out = of(row, Counter.MISSING);
                int onMat = of(row, Counter.ON_MAT);
                yield new FastenerState(all - loose - out, loose, out, onMat);
            }
            case CLIPS, TIE, CONNECTOR -> {
                int open = of(row, Counter.OPEN);
                yield new OpenState(all - open, open);
            }
            case JOINT -> new JointState(of(row, Counter.RELEASED), of(row, Counter.LAID));
            case SETTING -> setting(row);
            case SOURCE -> source(row);
        };
    }

    private static SettingState setting(int... row) {
        if (of(row, Counter.DISTURBED) > 0) {
            return SettingState.DISTURBED;
        }
        if (of(row, Counter.RESTORED) > 0) {
            return SettingState.RESTORED;
        }
        return of(row, Counter.NOTED) > 0 ? SettingState.NOTED : SettingState.AS_FOUND;
    }

    private static SourceState source(int... row) {
        if (of(row, Counter.POWERLESS) == 0) {
            return SourceState.LIVE;
        }
        return of(row, Counter.PROVED) > 0 ? SourceState.PROVED_DEAD : SourceState.ISOLATED;
    }

    private static int of(int[] row, Counter counter) {
        return row[counter.ordinal()];
    }
}
