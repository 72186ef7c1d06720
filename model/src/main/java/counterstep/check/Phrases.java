package counterstep.check;

import counterstep.ledger.FastenerState;
import counterstep.ledger.ItemState;
import counterstep.ledger.JointState;
import counterstep.ledger.OpenState;
import counterstep.ledger.PartState;
import counterstep.ledger.SettingState;
import counterstep.model.Drive;
import counterstep.model.FastenerSet;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import counterstep.model.Tie;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** How findings name items, counts and steps. */
public final class Phrases {
    private final Index index;

    Phrases(Index index) {
        this.index = index;
    }

    /** All of an item: 'the 5 board screws (T5)', 'the main board' as it is called. */
    public Noun all(ItemId id) {
        return some(id, index.item(id).quantity());
    }

    /** So many of an item: '1 of the 5 board screws (T5)'. */
    public Noun some(ItemId id, int count) {
        Item item = index.item(id);
        int size = item.quantity();
        String name = item.name() + drive(item);
        if (size == 1 && count == 1) {
            return new Noun(name, false);
        }
        if (count >= size) {
            return new Noun(
                    "the " + (count == size ? "" : count + " for ") + size + " " + name, true);
        }
        return new Noun(count + " of the " + size + " " + name, count != 1);
    }

    /** A holder after its part: '2 screws (T5)', or its name. */
    public String counted(ItemId id, int count) {
        Item item = index.item(id);
        if (item instanceof FastenerSet set) {
            String form = set.form().word() + (count == 1 ? "" : "s");
            return count + " " + form + drive(set);
        }
        return item.quantity() == 1 ? item.name() : count + " " + item.name();
    }

    private static String drive(Item item) {
        return item instanceof FastenerSet set
                ? set.drive().map(Drive::label).map(label -> " (" + label + ")").orElse("")
                : "";
    }

    /** What ends with a part: '2 screws (T5) and flat cable'. */
    public String others(Ending ending) {
        return list(ending.with().stream().map(one -> counted(one.item(), one.count())).toList());
    }

    /** A part and what ends with it: 'cable clamp and its 2 screws (T5)'. */
    public Noun together(Ending ending) {
        Noun part = some(ending.item(), ending.count());
        if (ending.with().isEmpty()) {
            return part;
        }
        String joined = ending.with().size() == 1 ? " and its " : ", its ";
        return new Noun(part.text() + joined + others(ending), true);
    }

    /** The names of items, 'flat cable, aerial cable and cell lead'. */
    public String names(Collection<ItemId> ids) {
        return list(ids.stream().distinct().map(id -> index.item(id).name()).toList());
    }

    /** The name of an item. */
    public String name(ItemId id) {
        return index.item(id).name();
    }

    /** What is unfinished in a state: 'open', 'out', 'aside'. */
    public static String unfinished(Item item, ItemState state) {
        if (state instanceof FastenerState set) {
            return set.missing() > 0 ? "out" : "loose";
        }
        if (state instanceof PartState part) {
            return part.away() > 0 ? "off" : "aside";
        }
        if (state instanceof OpenState) {
            return item instanceof Tie ? "cut" : "open";
        }
        if (state instanceof JointState) {
            return "released";
        }
        return state instanceof SettingState ? "not restored" : "isolated";
    }

    /** 'step 7', by the number in page order. */
    public String step(StepId step) {
        return "step " + index.number(step);
    }

    /** 'step 7' or 'steps 7, 9 and 12'. */
    public String steps(Collection<StepId> steps) {
        List<String> numbers =
                steps.stream().distinct().map(index::number).sorted().map(String::valueOf).toList();
        return (numbers.size() == 1 ? "step " : "steps ") + list(numbers);
    }

    /** A list in words. */
    public static String list(List<String> words) {
        int last = words.size() - 1;
        if (last <= 0) {
            return words.stream().collect(Collectors.joining());
        }
        return String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** With a capital, to begin a sentence. */
    public static String sentence(String words) {
        return words.isEmpty()
                ? words
                : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
