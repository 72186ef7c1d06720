package counterstep.testing;

import counterstep.ledger.FastenerState;
import counterstep.ledger.ItemState;
import counterstep.ledger.JointState;
import counterstep.ledger.OpenState;
import counterstep.ledger.PartState;
import counterstep.ledger.SettingState;
import counterstep.ledger.SourceState;
import counterstep.model.Action;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.Part;
import counterstep.model.Procedure;
import counterstep.model.Setting;
import counterstep.model.Verb;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToIntFunction;

/**
 * The page-order ledger once more, as slowly and plainly as it can be said: nothing is kept, every
 * number is counted again from the first action on. An oracle for tests.
 */
public final class SlowLedger {
    static final Set<Verb> DISTURBING =
            EnumSet.of(
                    Verb.LOOSEN,
                    Verb.REMOVE,
                    Verb.UNCLIP,
                    Verb.CUT,
                    Verb.DISCONNECT,
                    Verb.RELEASE,
                    Verb.MOVE_ASIDE);

    final Procedure procedure;
    final List<Action> actions;

    /** Counts a procedure. */
    public SlowLedger(Procedure procedure) {
        this.procedure = procedure;
        this.actions = procedure.steps().stream().flatMap(step -> step.actions().stream()).toList();
    }

    /** How many of these actions do on an item what the verbs say, less those of the others. */
    private int net(ItemId item, int done, Set<Verb> more, Set<Verb> less) {
        return sum(
                item,
                done,
                action ->
                        (more.contains(action.verb()) ? action.count() : 0)
                                - (less.contains(action.verb()) ? action.count() : 0));
    }

    private int sum(ItemId item, int done, ToIntFunction<Action> amount) {
        return actions.subList(0, done).stream()
                .filter(action -> action.item().filter(item::equals).isPresent())
                .mapToInt(amount)
                .sum();
    }

    /** Holes that are empty; parts away. */
    int missing(Item item, int done) {
        boolean part = item instanceof Part;
        Set<Verb> more = part ? EnumSet.of(Verb.REMOVE, Verb.TAKE_AWAY) : EnumSet.of(Verb.REMOVE);
        Set<Verb> less =
                part
                        ? EnumSet.of(Verb.REINSTALL, Verb.BRING_IN, Verb.FIT_NEW)
                        : EnumSet.of(Verb.REINSTALL, Verb.FIT_NEW);
        return net(item.id(), done, more, less);
    }

    int onMat(Item item, int done) {
        boolean part = item instanceof Part;
        Set<Verb> more = part ? EnumSet.of(Verb.REMOVE, Verb.TAKE_AWAY) : EnumSet.of(Verb.REMOVE);
        Set<Verb> less =
                part
                        ? EnumSet.of(Verb.REINSTALL, Verb.BRING_IN, Verb.DISCARD)
                        : EnumSet.of(Verb.REINSTALL, Verb.DISCARD);
        return net(item.id(), done, more, less);
    }

    /** Parts aside or away. */
    int off(Item part, int done) {
        return sum(
                part.id(),
                done,
                action ->
                        switch (action.verb()) {
                            case REMOVE, MOVE_ASIDE -> action.count();
                            case REINSTALL, RETURN -> -action.count();
                            case FIT_NEW -> action.aside() ? 0 : -action.count();
                            default -> 0;
                        });
    }

    int loose(Item set, int done) {
        int loose = 0;
        for (Action action : actions.subList(0, done)) {
            if (action.item().filter(set.id()::equals).isPresent()) {
                int k = action.count();
                loose =
                        switch (action.verb()) {
                            case LOOSEN -> loose + k;
                            case TIGHTEN -> loose - k;
                            case REINSTALL, FIT_NEW -> loose + (action.fingerTight() ? k : 0);
                            case REMOVE -> loose <= 0 ? loose : Math.max(0, loose - k);
                            default -> loose;
                        };
            }
        }
        return loose;
    }

    /** Clips and connectors open, ties cut. */
    int open(Item item, int done) {
        return sum(
                item.id(),
                done,
                action ->
                        !SlowVerbs.fit(action.verb(), item) || action.verb().stateless()
                                ? 0
                                : SlowVerbs.opens(action.verb())
                                        ? action.count()
                                        : -action.count());
    }

    int released(Item joint, int done) {
        return sum(
                joint.id(),
                done,
                action ->
                        switch (action.verb()) {
                            case RELEASE -> 1;
                            case PRESS, REJOIN -> -1;
                            default -> 0;
                        });
    }

    int laid(Item joint, int done) {
        return sum(
                joint.id(),
                done,
                action ->
                        switch (action.verb()) {
                            case LAY -> 1;
                            case PRESS -> -1;
                            default -> 0;
                        });
    }

    int noted(Item setting, int done) {
        return sum(setting.id(), done, action -> action.verb() == Verb.NOTE ? 1 : 0);
    }

    /** Whether what it belongs to was touched since the value was last restored. */
    boolean disturbed(Setting setting, int done) {
        boolean disturbed = false;
        for (Action action : actions.subList(0, done)) {
            if (disturbs(action, setting)) {
                disturbed = true;
            } else if (restores(action, setting)) {
                disturbed = false;
            }
        }
        return disturbed;
    }

    private boolean disturbs(Action action, Setting setting) {
        return DISTURBING.contains(action.verb())
                && action.item().filter(setting.belongsTo()::contains).isPresent()
                && SlowVerbs.acts(action.verb(), item(action.item().orElseThrow()));
    }

    private static boolean restores(Action action, Setting setting) {
        return action.verb() == Verb.RESTORE
                && action.item().filter(setting.id()::equals).isPresent();
    }

    Item item(ItemId id) {
        return procedure.item(id);
    }

    /** The state of an item when so many actions are done. */
    public ItemState state(Item item, int done) {
        int all = item.quantity();
        if (item instanceof FastenerSet) {
            int loose = loose(item, done);
            int missing = missing(item, done);
            return new FastenerState(all - loose - missing, loose, missing, onMat(item, done));
        }
        if (item instanceof Part) {
            int off = off(item, done);
            int away = missing(item, done);
            return new PartState(all - off, off - away, away, onMat(item, done));
        }
        if (item instanceof Joint) {
            return new JointState(released(item, done), laid(item, done));
        }
        if (item instanceof Setting setting) {
            return setting(setting, done);
        }
        if (item instanceof EnergySource source) {
            SlowPower power = new SlowPower(this);
            return power.live(source, done)
                    ? SourceState.LIVE
                    : power.proved(source, done) ? SourceState.PROVED_DEAD : SourceState.ISOLATED;
        }
        return new OpenState(all - open(item, done), open(item, done));
    }

    private SettingState setting(Setting setting, int done) {
        if (disturbed(setting, done)) {
            return SettingState.DISTURBED;
        }
        if (actions.subList(0, done).stream().anyMatch(action -> restores(action, setting))) {
            return SettingState.RESTORED;
        }
        return noted(setting, done) > 0 ? SettingState.NOTED : SettingState.AS_FOUND;
    }
}
