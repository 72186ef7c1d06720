package counterstep.ledger;

import static counterstep.ledger.Counter.DISTURBED;
import static counterstep.ledger.Counter.ISOLATED;
import static counterstep.ledger.Counter.LOOSE;
import static counterstep.ledger.Counter.MISSING;
import static counterstep.ledger.Counter.OFF;
import static counterstep.ledger.Counter.OPEN;
import static counterstep.ledger.Counter.RELEASED;

import counterstep.model.Item;
import counterstep.model.ItemId;
import java.util.List;
import java.util.stream.Stream;

/** When an item is finished, and when it lets go of a part or cable. */
final class Rest {
    private Rest() {}

    /** In place, tight, mated, holding, restored: what a cover may hide. */
    static List<Demand> finished(FailureKind kind, Item item) {
        Stream<Counter> atZero =
                switch (ItemKind.of(item)) {
                    case PART -> Stream.of(OFF);
                    case FASTENERS -> Stream.of(MISSING, LOOSE);
                    case CAPTIVE -> Stream.of(LOOSE);
                    case CLIPS, TIE, CONNECTOR -> Stream.of(OPEN);
                    case JOINT -> Stream.of(RELEASED);
                    case SETTING -> Stream.of(DISTURBED);
                    case SOURCE -> Stream.of(ISOLATED);
                };
        return atZero.map(counter -> Demand.atMost(kind, item.id(), 0, counter)).toList();
    }

    /** Out, open, cut, released; loose where that is enough. */
    static Demand released(FailureKind kind, Item item, boolean looseIsEnough) {
        ItemId id = item.id();
        int all = item.quantity();
        return switch (ItemKind.of(item)) {
            case PART -> Demand.atLeast(kind, id, all, OFF);
            case FASTENERS ->
                    looseIsEnough
                            ? Demand.atLeast(kind, id, all, MISSING, LOOSE)
                            : Demand.atLeast(kind, id, all, MISSING);
            case CAPTIVE -> Demand.atLeast(kind, id, all, MISSING, LOOSE);
            case CLIPS, TIE, CONNECTOR -> Demand.atLeast(kind, id, all, OPEN);
            case JOINT -> Demand.atLeast(kind, id, 1, RELEASED);
            case SETTING, SOURCE -> Demand.atLeast(kind, id, 0, ISOLATED);
        };
    }
}
