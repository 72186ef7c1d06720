package counterstep.check;

import counterstep.ledger.FastenerState;
import counterstep.ledger.Happening;
import counterstep.ledger.ItemState;
import counterstep.ledger.JointState;
import counterstep.ledger.Ledger;
import counterstep.ledger.OpenState;
import counterstep.ledger.PartState;
import counterstep.ledger.SettingState;
import counterstep.ledger.SourceState;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/** Reads off one item's counters at the end what is not as it was. */
final class EndingsOf {
    private final Item item;
    private final List<Happening> happenings;
    private final List<Ending> endings = new ArrayList<>();

    private EndingsOf(Item item, Ledger ledger) {
        this.item = item;
        this.happenings = ledger.happenings(item.id());
    }

    static List<Ending> item(Item item, Ledger ledger) {
        EndingsOf reading = new EndingsOf(item, ledger);
        reading.read(ledger.atEnd(item.id()));
        return reading.endings;
    }

    private void read(ItemState end) {
        if (end instanceof FastenerState set) {
            read(set);
        } else if (end instanceof PartState part) {
            read(part);
        } else if (end instanceof OpenState opened) {
            off(Remainder.OPEN, opened.open(), EndingsOf::open);
            tooMany(opened.open(), EndingsOf::open);
        } else if (end instanceof JointState joint) {
            off(Remainder.OPEN, joint.released(), EndingsOf::released);
        } else if (end == SettingState.DISTURBED || end == SettingState.NOTED) {
            add(Remainder.NOT_RESTORED, 1, stepsOf(Verb.NOTE));
        } else if (end instanceof SourceState) {
            long own = count(Verb.ISOLATE) - count(Verb.RESTORE_POWER);
            if (own > 0) {
                add(Remainder.NO_POWER, (int) own, stepsOf(Verb.ISOLATE));
            }
        }
    }

    private void read(FastenerState set) {
        off(Remainder.NEVER_BACK, set.missing(), EndingsOf::missing);
        off(Remainder.LOOSE, set.loose(), EndingsOf::loose);
        tooMany(set.missing(), EndingsOf::missing);
        if (item instanceof FastenerSet screws && screws.captive()) {
            tooMany(set.loose(), EndingsOf::loose);
        }
    }

    private void read(PartState part) {
        int off = part.aside() + part.away();
        int away = Math.min(off, Math.max(0, part.away()));
        off(Remainder.NEVER_BACK, away, EndingsOf::offPlace);
        off(Remainder.ASIDE, off - away, EndingsOf::offPlace);
        tooMany(off, EndingsOf::offPlace);
    }

    private void off(Remainder remainder, int count, ToIntFunction<ItemState> counter) {
        if (count > 0) {
            add(remainder, count, new Unpaired(happenings, counter).takenOff());
        }
    }

    private void tooMany(int count, ToIntFunction<ItemState> counter) {
        if (count < 0) {
            List<StepId> steps = new Unpaired(happenings, counter).putBackTooMany();
            add(Remainder.TOO_MANY, -count, steps);
        }
    }

    private void add(Remainder remainder, int count, List<StepId> steps) {
        ItemId id = item.id();
        endings.add(new Ending(id, remainder, count, steps, List.of()));
    }

    private List<StepId> stepsOf(Verb verb) {
        return happenings.stream()
                .filter(happening -> happening.what().verb() == verb)
                .map(Happening::step)
                .toList();
    }

    private long count(Verb verb) {
        return stepsOf(verb).size();
    }

    private static int missing(ItemState state) {
        return state instanceof FastenerState set ? set.missing() : 0;
    }

    private static int loose(ItemState state) {
        return state instanceof FastenerState set ? set.loose() : 0;
    }

    private static int offPlace(ItemState state) {
        return state instanceof PartState part ? part.aside() + part.away() : 0;
    }

    private static int open(ItemState state) {
        return state instanceof OpenState opened ? opened.open() : 0;
    }

    private static int released(ItemState state) {
        return state instanceof JointState joint ? joint.released() : 0;
    }
}
