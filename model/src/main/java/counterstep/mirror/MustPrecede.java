package counterstep.mirror;

import counterstep.ledger.Needs;
import counterstep.ledger.Turn;
import counterstep.model.Action;
import counterstep.model.EnergySource;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Setting;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which action must be done before another on the way back, by the facts on the items: what a cover
 * hides before the cover, a part before what holds it, all that is fed before power.
 */
final class MustPrecede {
    private final Index index;
    private final Map<ItemId, List<EnergySource>> restoredBy = new HashMap<>();

    /** For each item those of which a fact tells anything with it: most pairs need no look. */
    private final Map<ItemId, Set<ItemId>> related = new HashMap<>();

    MustPrecede(Index index) {
        this.index = index;
        Needs needs = Needs.of(index);
        for (Item item : index.procedure().items()) {
            relate(item.id(), item.id());
            if (item instanceof Part part) {
                part.covers().forEach(covered -> relate(part.id(), covered));
                part.tetheredBy().forEach(tether -> relate(part.id(), tether));
                part.heldBy().forEach(hold -> relate(part.id(), hold.holder()));
            }
            if (item instanceof Setting setting) {
                setting.belongsTo().forEach(owner -> relate(setting.id(), owner));
            }
            if (item instanceof EnergySource source) {
                needs.chain(source)
                        .forEach(
                                link -> {
                                    remember(link.id(), source);
                                    link.isolatedBy().ifPresent(plug -> remember(plug, source));
                                });
            }
        }
    }

    private void relate(ItemId one, ItemId other) {
        related.computeIfAbsent(one, id -> new HashSet<>()).add(other);
        related.computeIfAbsent(other, id -> new HashSet<>()).add(one);
    }

    private void remember(ItemId by, EnergySource source) {
        source.feeds().forEach(fed -> relate(by, fed));
        restoredBy.computeIfAbsent(by, id -> new ArrayList<>()).add(source);
    }

    /** Whether one of some actions must be done before one of others. */
    boolean any(Collection<Action> first, Collection<Action> later) {
        return first.stream()
                .filter(action -> action.item().isPresent())
                .anyMatch(action -> later.stream().anyMatch(then -> test(action, then)));
    }

    private boolean test(Action first, Action then) {
        if (then.item().isEmpty()) {
            return false;
        }
        ItemId earlier = first.item().orElseThrow();
        ItemId later = then.item().get();
        if (!related.get(later).contains(earlier)) {
            return false;
        }
        if (earlier.equals(later)) {
            return onTheWay(first.verb())
                    && Turn.of(then.verb()) == Turn.BACK
                    && closes(then)
                    && !closes(first);
        }
        return under(first, earlier, then, later)
                || holds(first, earlier, then, later)
                || sets(first, earlier, then, later)
                || powers(first, earlier, then, later);
    }

    /** Whether the verb brings its item nearer to its place without finishing it. */
    private static boolean onTheWay(Verb verb) {
        return verb == Verb.LAY
                || verb == Verb.DISCARD
                || verb == Verb.BRING_IN
                || verb == Verb.REINSTALL
                || verb == Verb.FIT_NEW;
    }

    /** Whether the action leaves its item as a finished device has it. */
    private static boolean closes(Action action) {
        return Turn.of(action.verb()) == Turn.BACK
                && action.verb() != Verb.BRING_IN
                && !action.fingerTight()
                && !action.aside();
    }

    /** Whether a part goes on its place. */
    static boolean putsOn(Action action) {
        return switch (action.verb()) {
            case RETURN, REINSTALL -> true;
            case FIT_NEW -> !action.aside();
            case LOOSEN, TIGHTEN, REMOVE, DISCARD, UNCLIP, CLIP, CUT, DISCONNECT -> false;
            case RECONNECT, RELEASE, LAY, PRESS, REJOIN, MOVE_ASIDE, TAKE_AWAY -> false;
            case BRING_IN, NOTE, RESTORE, ISOLATE, PROVE_DEAD, RESTORE_POWER -> false;
            case APPLY, CLEAN, CHECK, ALIGN, WAIT -> false;
        };
    }

    private static boolean atItsPlace(Action action) {
        return action.verb() != Verb.WAIT && action.verb() != Verb.DISCARD;
    }

    /** Work on what a cover hides, and laying what a part is pressed on. */
    private boolean under(Action first, ItemId earlier, Action then, ItemId later) {
        return putsOn(then)
                && index.item(later) instanceof Part part
                && ((atItsPlace(first) && part.covers().contains(earlier))
                        || (first.verb() == Verb.LAY && heldBy(part, earlier)));
    }

    /** A part before what holds it; a part at least beside its place before its leads. */
    private boolean holds(Action first, ItemId earlier, Action then, ItemId later) {
        return Turn.of(then.verb()) == Turn.BACK
                && index.item(earlier) instanceof Part part
                && ((putsOn(first) && heldBy(part, later))
                        || (Turn.of(first.verb()) == Turn.BACK
                                && first.verb() != Verb.RETURN
                                && part.tetheredBy().contains(later)));
    }

    private static boolean heldBy(Part part, ItemId holder) {
        return part.heldBy().stream().anyMatch(hold -> hold.holder().equals(holder));
    }

    private boolean sets(Action first, ItemId earlier, Action then, ItemId later) {
        return then.verb() == Verb.RESTORE
                && Turn.of(first.verb()) == Turn.BACK
                && first.verb() != Verb.TIGHTEN
                && index.item(later) instanceof Setting setting
                && setting.belongsTo().contains(earlier);
    }

    private boolean powers(Action first, ItemId earlier, Action then, ItemId later) {
        boolean restores = then.verb() == Verb.RESTORE_POWER || then.verb() == Verb.RECONNECT;
        boolean test = first.poweredTest() && first.verb().stateless();
        return restores
                && atItsPlace(first)
                && !test
                && restoredBy.getOrDefault(later, List.of()).stream()
                        .anyMatch(source -> source.feeds().contains(earlier));
    }
}
