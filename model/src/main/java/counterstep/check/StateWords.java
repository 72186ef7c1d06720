package counterstep.check;

import counterstep.ledger.FastenerState;
import counterstep.ledger.ItemState;
import counterstep.ledger.JointState;
import counterstep.ledger.OpenState;
import counterstep.ledger.PartState;
import counterstep.ledger.SettingState;
import counterstep.ledger.SourceState;
import counterstep.model.Item;
import counterstep.model.Tie;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The state of an item in words: '3 tight, 2 out', 'aside', 'proved dead'. */
public final class StateWords {
    private final Item item;
    private final List<String> words = new ArrayList<>();

    private StateWords(Item item) {
        this.item = item;
    }

    /** What an item is like. A number that no device can have is told as too many. */
    public static String of(Item item, ItemState state) {
        StateWords words = new StateWords(item);
        if (state instanceof FastenerState set) {
            words.count(set.tight(), "tight").count(set.loose(), "loose");
            words.count(set.missing(), "out").tooMany(set.missing(), "in");
        } else if (state instanceof PartState part) {
            words.count(part.on(), "in place").count(part.aside(), "aside");
            words.count(part.away(), "off").tooMany(part.away() + part.aside(), "put back");
        } else if (state instanceof OpenState open) {
            boolean tie = item instanceof Tie;
            words.count(open.closed(), tie ? "holding" : "closed");
            words.count(open.open(), tie ? "cut" : "open").tooMany(open.open(), "closed");
        } else {
            return single(state);
        }
        return String.join(", ", words.words);
    }

    private StateWords count(int number, String word) {
        if (number > 0) {
            words.add(item.quantity() == 1 && number == 1 ? word : number + " " + word);
        }
        return this;
    }

    private StateWords tooMany(int number, String word) {
        if (number < 0) {
            words.add(-number + " too many " + word);
        }
        return this;
    }

    private static String single(ItemState state) {
        if (state instanceof JointState joint) {
            return joint.finished()
                    ? "holding"
                    : joint.laid() > 0 ? "laid, not pressed" : "released";
        }
        if (state instanceof SettingState || state instanceof SourceState) {
            return state.toString().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
        return "";
    }
}
