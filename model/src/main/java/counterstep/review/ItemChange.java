package counterstep.review;

import counterstep.check.Phrases;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Torque;
import java.util.ArrayList;
import java.util.List;

/** Says what is different in an item. */
final class ItemChange {
    private ItemChange() {}

    static String of(Item old, Item now) {
        List<String> changes = new ArrayList<>();
        if (!old.name().equals(now.name())) {
            changes.add("now called “" + now.name() + "”");
        }
        if (old.quantity() != now.quantity()) {
            changes.add(now.quantity() + " of them, not " + old.quantity());
        }
        if (old instanceof FastenerSet before && now instanceof FastenerSet set) {
            fasteners(before, set, changes);
        }
        return Phrases.sentence(old.name())
                + ": "
                + (changes.isEmpty() ? "other facts" : Phrases.list(changes))
                + ".";
    }

    private static void fasteners(FastenerSet old, FastenerSet now, List<String> changes) {
        if (!old.tray().equals(now.tray())) {
            changes.add(now.tray().isEmpty() ? "in no tray" : "in tray “" + now.tray() + "”");
        }
        if (!old.torque().equals(now.torque())) {
            changes.add("torque " + now.torque().map(Torque::label).orElse("not stated"));
        }
    }
}
