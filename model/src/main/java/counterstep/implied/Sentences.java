package counterstep.implied;

import counterstep.ledger.FailureKind;
import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.Setting;
import java.util.Locale;

/** Why a link must hold, in one sentence. */
final class Sentences {
    private final Index index;

    Sentences(Index index) {
        this.index = index;
    }

    /** For a need that one item's action has of another item. */
    String need(FailureKind kind, ItemId item, ItemId about) {
        return switch (kind) {
            case REACH -> fact(about, " covers ", item);
            case CLOSE -> fact(item, " covers ", about);
            case HOLD -> fact(item, " is held by ", about);
            case SEAT -> fact(about, " is held by ", item);
            case TETHER -> fact(item, " is tethered by ", about);
            case LEAD -> fact(about, " is tethered by ", item);
            case ENERGY -> fact(about, " feeds ", item);
            case NOTE -> fact(about, " belongs to ", item);
            case PRECONDITION ->
                    index.item(item) instanceof Setting
                            ? fact(item, " belongs to ", about)
                            : name(item)
                                    + " is laid while "
                                    + index.item(about).name()
                                    + " is off.";
        };
    }

    /** For two actions on the same item. */
    String order(Act earlier, Act later, ItemId item) {
        return name(item) + ": " + earlier.verb().word() + " before " + later.verb().word() + ".";
    }

    /** For the wait and the proof of a source. */
    String provedDead(ItemId source) {
        return name(source) + " is isolated, waited for, then proved dead.";
    }

    /** For two ways to isolate a source. */
    String isolatedOnce(ItemId source) {
        return name(source) + " is isolated once at a time.";
    }

    private String fact(ItemId one, String relation, ItemId other) {
        return name(one) + relation + index.item(other).name() + ".";
    }

    private String name(ItemId item) {
        String name = index.item(item).name();
        return name.isEmpty()
                ? name
                : name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }
}
