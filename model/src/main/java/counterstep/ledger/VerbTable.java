package counterstep.ledger;

import static counterstep.ledger.Counter.DISTURBED;
import static counterstep.ledger.Counter.ISOLATED;
import static counterstep.ledger.Counter.LAID;
import static counterstep.ledger.Counter.LOOSE;
import static counterstep.ledger.Counter.MISSING;
import static counterstep.ledger.Counter.NOTED;
import static counterstep.ledger.Counter.OFF;
import static counterstep.ledger.Counter.ON_MAT;
import static counterstep.ledger.Counter.OPEN;
import static counterstep.ledger.Counter.POWERLESS;
import static counterstep.ledger.Counter.PROVED;
import static counterstep.ledger.Counter.RELEASED;
import static counterstep.ledger.Counter.RESTORED;
import static counterstep.ledger.Counter.WAITED;
import static counterstep.ledger.FailureKind.PRECONDITION;

import counterstep.ledger.Effect.Change;
import counterstep.model.Action;
import counterstep.model.EnergySource;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Setting;
import java.util.List;

/** The table of verbs: each verb's own precondition and its effect on its own item. */
final class VerbTable {
    private final Action action;
    private final Item item;
    private final ItemId id;
    private final ItemKind kind;
    private final int size;
    private final int count;

    private VerbTable(Action action, Item item) {
        this.action = action;
        this.item = item;
        this.id = item.id();
        this.kind = ItemKind.of(item);
        this.size = item.quantity();
        this.count = action.count();
    }

    /** The row of an action on its item. */
    static Row row(Action action, Item item) {
        return new VerbTable(action, item).row();
    }

    private Row row() {
        return switch (action.verb()) {
            case LOOSEN -> screws(List.of(atMost(size - count, MISSING, LOOSE)), add(LOOSE, count));
            case TIGHTEN -> screws(List.of(atLeast(count, LOOSE)), add(LOOSE, -count));
            case REMOVE -> kind == ItemKind.PART ? removePart() : removeFasteners();
            case REINSTALL -> kind == ItemKind.PART ? reinstallPart() : reinstallFasteners();
            case DISCARD -> discard();
            case FIT_NEW -> fitNew();
            case UNCLIP -> open(ItemKind.CLIPS);
            case CLIP -> close(ItemKind.CLIPS);
            case CUT -> open(ItemKind.TIE);
            case DISCONNECT -> open(ItemKind.CONNECTOR);
            case RECONNECT -> close(ItemKind.CONNECTOR);
            case RELEASE -> joint(List.of(atMost(0, RELEASED)), add(RELEASED, 1));
            case LAY -> joint(releasedNotLaid(), add(LAID, 1));
            case PRESS -> joint(List.of(atLeast(1, LAID)), add(LAID, -1), add(RELEASED, -1));
            case REJOIN -> joint(releasedNotLaid(), add(RELEASED, -1));
            case MOVE_ASIDE -> part(List.of(atMost(size - count, OFF)), add(OFF, count));
            case TAKE_AWAY -> part(List.of(aside()), add(MISSING, count), add(ON_MAT, count));
            case BRING_IN ->
                    part(
                            List.of(atLeast(count, MISSING), atLeast(count, ON_MAT)),
                            add(MISSING, -count),
                            add(ON_MAT, -count));
            case RETURN -> part(List.of(aside()), add(OFF, -count));
            case NOTE -> setting(List.of(atMost(0, DISTURBED)), add(NOTED, 1));
            case RESTORE -> setting(notedAndDisturbed(), set(DISTURBED, 0), set(RESTORED, 1));
            case ISOLATE -> source(List.of(atMost(0, POWERLESS)), add(ISOLATED, 1));
            case PROVE_DEAD -> source(powerlessForLong(), set(PROVED, 1));
            case RESTORE_POWER -> source(List.of(atLeast(1, ISOLATED)), add(ISOLATED, -1));
            case APPLY, CLEAN, CHECK, ALIGN, WAIT -> Row.NOTHING;
        };
    }

    private Row screws(List<Demand> demands, Effect... effects) {
        return rowIf(kind == ItemKind.FASTENERS || kind == ItemKind.CAPTIVE, demands, effects);
    }

    private Row removeFasteners() {
        return rowIfLoose(
                List.of(atMost(size - count, MISSING)),
                new Effect(id, LOOSE, Change.TAKE_WHAT_IS_THERE, count),
                add(MISSING, count),
                add(ON_MAT, count));
    }

    private Row reinstallFasteners() {
        return rowIfLoose(
                List.of(atLeast(count, MISSING), atLeast(count, ON_MAT)),
                add(MISSING, -count),
                add(ON_MAT, -count),
                add(LOOSE, action.fingerTight() ? count : 0));
    }

    private Row removePart() {
        return part(
                List.of(atMost(size - count, OFF)),
                add(OFF, count),
                add(MISSING, count),
                add(ON_MAT, count));
    }

    private Row reinstallPart() {
        return part(
                List.of(atLeast(count, MISSING), atLeast(count, ON_MAT)),
                add(OFF, -count),
                add(MISSING, -count),
                add(ON_MAT, -count));
    }

    private Row discard() {
        List<Demand> demands = List.of(atLeast(count, ON_MAT));
        Effect effect = add(ON_MAT, -count);
        return kind == ItemKind.PART ? part(demands, effect) : rowIfLoose(demands, effect);
    }

    private Row fitNew() {
        if (kind == ItemKind.TIE) {
            return close(ItemKind.TIE);
        }
        List<Demand> demands = List.of(atLeast(count, MISSING));
        if (kind == ItemKind.PART) {
            return part(demands, add(MISSING, -count), add(OFF, action.aside() ? 0 : -count));
        }
        return rowIfLoose(
                demands, add(MISSING, -count), add(LOOSE, action.fingerTight() ? count : 0));
    }

    private Row open(ItemKind wanted) {
        return rowIf(kind == wanted, List.of(atMost(size - count, OPEN)), add(OPEN, count));
    }

    private Row close(ItemKind wanted) {
        return rowIf(kind == wanted, List.of(atLeast(count, OPEN)), add(OPEN, -count));
    }

    private Row joint(List<Demand> demands, Effect... effects) {
        return rowIf(kind == ItemKind.JOINT, demands, effects);
    }

    private List<Demand> releasedNotLaid() {
        return List.of(atLeast(1, RELEASED), atMost(0, LAID));
    }

    private Row setting(List<Demand> demands, Effect... effects) {
        return rowIf(kind == ItemKind.SETTING, demands, effects);
    }

    /** A setting that belongs to nothing cannot be seen to be disturbed; then noting is enough. */
    private List<Demand> notedAndDisturbed() {
        boolean seen = item instanceof Setting setting && !setting.belongsTo().isEmpty();
        return List.of(atLeast(1, NOTED), atLeast(seen ? 1 : 0, DISTURBED));
    }

    private Row source(List<Demand> demands, Effect... effects) {
        return rowIf(kind == ItemKind.SOURCE, demands, effects);
    }

    private List<Demand> powerlessForLong() {
        int wait = item instanceof EnergySource source ? source.waitSeconds() : 0;
        return List.of(atLeast(1, POWERLESS), atLeast(wait, WAITED));
    }

    private Row part(List<Demand> demands, Effect... effects) {
        return rowIf(kind == ItemKind.PART, demands, effects);
    }

    /** For fasteners that come out; of captive ones the arithmetic goes on, but it never holds. */
    private Row rowIfLoose(List<Demand> demands, Effect... effects) {
        if (kind == ItemKind.CAPTIVE) {
            return new Row(List.of(Demand.never(id)), List.of(effects));
        }
        return rowIf(kind == ItemKind.FASTENERS, demands, effects);
    }

    private Row rowIf(boolean fits, List<Demand> demands, Effect... effects) {
        return fits
                ? new Row(demands, List.of(effects))
                : new Row(List.of(Demand.never(id)), List.of());
    }

    private Demand atLeast(int least, Counter... counters) {
        return Demand.atLeast(PRECONDITION, id, least, counters);
    }

    private Demand atMost(int most, Counter... counters) {
        return Demand.atMost(PRECONDITION, id, most, counters);
    }

    private Demand aside() {
        return Demand.excess(id, count, OFF, MISSING);
    }

    private Effect add(Counter counter, int amount) {
        return new Effect(id, counter, Change.ADD, amount);
    }

    private Effect set(Counter counter, int value) {
        return new Effect(id, counter, Change.SET, value);
    }
}
