package counterstep.check.equipment;

import counterstep.check.Facts;
import counterstep.edit.ChangeItem;
import counterstep.edit.Edit;
import counterstep.edit.Edits;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.ItemId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Gives look-alikes a tray each, with the next free letters; those that have one keep it. */
final class TrayNames {
    private final Set<String> taken = new HashSet<>();
    private final List<FastenerSet> named = new ArrayList<>();
    private final List<Edit> edits = new ArrayList<>();

    private TrayNames(Facts facts) {
        for (Item item : facts.procedure().items()) {
            if (item instanceof FastenerSet set) {
                taken.add(LookAlike.tray(set));
            }
        }
    }

    static Edit of(Facts facts, Collection<ItemId> alike) {
        TrayNames names = new TrayNames(facts);
        alike.stream()
                .map(facts.index()::item)
                .filter(FastenerSet.class::isInstance)
                .map(FastenerSet.class::cast)
                .forEach(names::name);
        return new Edits("Name trays", names.edits);
    }

    private void name(FastenerSet set) {
        boolean free =
                !LookAlike.tray(set).isEmpty()
                        && named.stream().noneMatch(other -> LookAlike.confusing(set, other));
        if (free) {
            named.add(set);
        } else {
            FastenerSet inTray = set.withTray(next());
            named.add(inTray);
            edits.add(new ChangeItem(inTray));
        }
    }

    /** A, B to Z, then A1, B1 and on. */
    private String next() {
        int number = 0;
        while (!taken.add(letter(number))) {
            number++;
        }
        return letter(number);
    }

    private static String letter(int number) {
        int round = number / 26;
        return (char) ('A' + number % 26) + (round == 0 ? "" : String.valueOf(round));
    }
}
