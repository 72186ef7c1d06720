package counterstep.testing;

import counterstep.model.Action;
import counterstep.model.EnergySource;
import counterstep.model.FastenerSet;
import counterstep.model.Hold;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.Part;
import counterstep.model.Setting;
import counterstep.model.Verb;
import java.util.EnumSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Which conditions fail at one action of a procedure, asked one after the other. */
public final class SlowConditions {
    private static final Set<Verb> BACK =
            EnumSet.of(
                    Verb.REINSTALL,
                    Verb.FIT_NEW,
                    Verb.CLIP,
                    Verb.RECONNECT,
                    Verb.PRESS,
                    Verb.REJOIN);

    private final SlowLedger ledger;
    private final SlowPower power;
    private final int place;
    private final Action action;
    private final Set<String> failures = new TreeSet<>();

    private SlowConditions(SlowLedger ledger, int place) {
        this.ledger = ledger;
        this.power = new SlowPower(ledger);
        this.place = place;
        this.action = ledger.actions.get(place);
    }

    /** The failures of the action at a place, each 'KIND item', sorted. */
    public static Set<String> failures(SlowLedger ledger, int place) {
        SlowConditions asking = new SlowConditions(ledger, place);
        asking.action.item().map(ledger::item).ifPresent(asking::ask);
        return asking.failures;
    }

    private void fail(boolean holds, String kind, ItemId about) {
        if (!holds) {
            failures.add(kind + " " + about);
        }
    }

    private void ask(Item item) {
        boolean fits = SlowVerbs.fit(action.verb(), item);
        fail(fits && own(item), "PRECONDITION", item.id());
        if (!fits && !SlowVerbs.acts(action.verb(), item)) {
            return;
        }
        boolean touching = action.verb() != Verb.DISCARD && action.verb() != Verb.WAIT;
        parts().filter(part -> touching && part.covers().contains(item.id()))
                .forEach(p -> fail(ledger.off(p, place) >= p.quantity(), "REACH", p.id()));
        if (item instanceof Part part) {
            askPart(part);
        } else {
            askHolder(item);
        }
        others(item);
        if (touching && !(action.poweredTest() && action.verb().stateless())) {
            sources()
                    .filter(source -> source.feeds().contains(item.id()))
                    .filter(source -> !power.isolates(action, item, source))
                    .forEach(s -> fail(power.safe(s, place), "ENERGY", s.id()));
        }
        if (SlowLedger.DISTURBING.contains(action.verb())) {
            settings()
                    .filter(setting -> setting.belongsTo().contains(item.id()))
                    .forEach(s -> fail(ledger.noted(s, place) >= 1, "NOTE", s.id()));
        }
    }

    private boolean own(Item item) {
        int k = action.count();
        int n = item.quantity();
        int missing = ledger.missing(item, place);
        int onMat = ledger.onMat(item, place);
        boolean part = item instanceof Part;
        return switch (action.verb()) {
            case LOOSEN -> n - missing - ledger.loose(item, place) >= k;
            case TIGHTEN -> ledger.loose(item, place) >= k;
            case REMOVE -> n - (part ? ledger.off(item, place) : missing) >= k;
            case REINSTALL, BRING_IN -> missing >= k && onMat >= k;
            case DISCARD -> onMat >= k;
            case FIT_NEW ->
                    item instanceof counterstep.model.Tie
                            ? ledger.open(item, place) >= k
                            : missing >= k;
            case UNCLIP, CUT, DISCONNECT -> n - ledger.open(item, place) >= k;
            case CLIP, RECONNECT -> ledger.open(item, place) >= k;
            case RELEASE -> ledger.released(item, place) <= 0;
            case LAY, REJOIN -> ledger.released(item, place) >= 1 && ledger.laid(item, place) <= 0;
            case PRESS -> ledger.laid(item, place) >= 1;
            case MOVE_ASIDE -> n - ledger.off(item, place) >= k;
            case RETURN, TAKE_AWAY -> ledger.off(item, place) - missing >= k;
            case NOTE -> !ledger.disturbed((Setting) item, place);
            case RESTORE -> restorable((Setting) item);
            case ISOLATE -> power.live((EnergySource) item, place);
            case PROVE_DEAD -> provable((EnergySource) item);
            case RESTORE_POWER -> ownIsolations(item) >= 1;
            case APPLY, CLEAN, CHECK, ALIGN, WAIT -> true;
        };
    }

    private boolean restorable(Setting setting) {
        boolean disturbed = setting.belongsTo().isEmpty() || ledger.disturbed(setting, place);
        return disturbed && ledger.noted(setting, place) >= 1;
    }

    private boolean provable(EnergySource source) {
        return !power.live(source, place)
                && power.waitedAtProof(source, place) >= source.waitSeconds();
    }

    private long ownIsolations(Item item) {
        return ledger.actions.subList(0, place).stream()
                .filter(one -> one.item().filter(item.id()::equals).isPresent())
                .mapToInt(
                        one ->
                                one.verb() == Verb.ISOLATE
                                        ? 1
                                        : one.verb() == Verb.RESTORE_POWER ? -1 : 0)
                .sum();
    }

    /** Laying asks the part off; restoring asks what the setting belongs to in its place. */
    private void others(Item item) {
        if (action.verb() == Verb.LAY) {
            parts().filter(part -> holds(part, item))
                    .forEach(
                            p ->
                                    fail(
                                            ledger.off(p, place) >= p.quantity(),
                                            "PRECONDITION",
                                            p.id()));
        }
        if (action.verb() == Verb.RESTORE) {
            for (ItemId owner : ((Setting) item).belongsTo()) {
                Item owned = ledger.item(owner);
                boolean tightAlone = owned instanceof FastenerSet set && set.captive();
                boolean in = tightAlone || inPlace(owned);
                fail(in, "PRECONDITION", owner);
            }
        }
    }

    private boolean inPlace(Item item) {
        if (item instanceof Part) {
            return ledger.off(item, place) <= 0;
        }
        return item instanceof FastenerSet
                ? ledger.missing(item, place) <= 0
                : ledger.open(item, place) <= 0;
    }

    private void askPart(Part part) {
        Verb verb = action.verb();
        if (verb == Verb.MOVE_ASIDE || verb == Verb.REMOVE) {
            for (Hold hold : part.heldBy()) {
                Item holder = ledger.item(hold.holder());
                fail(released(holder, hold.looseIsEnough()), "HOLD", holder.id());
            }
        }
        if (verb == Verb.TAKE_AWAY || verb == Verb.REMOVE) {
            part.tetheredBy()
                    .forEach(one -> fail(released(ledger.item(one), false), "TETHER", one));
        }
        boolean on = verb == Verb.RETURN || verb == Verb.REINSTALL;
        if (on || (verb == Verb.FIT_NEW && !action.aside())) {
            part.covers().forEach(one -> fail(finished(ledger.item(one)), "CLOSE", one));
        }
    }

    private void askHolder(Item item) {
        boolean looseHolds =
                parts().flatMap(part -> part.heldBy().stream())
                                .anyMatch(h -> h.looseIsEnough() && h.holder().equals(item.id()))
                        || item instanceof FastenerSet set && set.captive();
        if (BACK.contains(action.verb()) || (action.verb() == Verb.TIGHTEN && looseHolds)) {
            parts().filter(part -> holds(part, item))
                    .forEach(part -> fail(ledger.off(part, place) <= 0, "SEAT", part.id()));
            parts().filter(part -> part.tetheredBy().contains(item.id()))
                    .forEach(part -> fail(ledger.missing(part, place) <= 0, "LEAD", part.id()));
        }
    }

    private static boolean holds(Part part, Item item) {
        return part.heldBy().stream().anyMatch(hold -> hold.holder().equals(item.id()));
    }

    private boolean released(Item holder, boolean looseIsEnough) {
        if (holder instanceof FastenerSet set) {
            int free = ledger.missing(set, place);
            boolean loose = looseIsEnough || set.captive();
            return free + (loose ? ledger.loose(set, place) : 0) >= set.quantity();
        }
        return holder instanceof Joint
                ? ledger.released(holder, place) >= 1
                : ledger.open(holder, place) >= holder.quantity();
    }

    private boolean finished(Item item) {
        if (item instanceof FastenerSet set) {
            boolean in = set.captive() || ledger.missing(set, place) <= 0;
            return in && ledger.loose(set, place) <= 0;
        }
        if (item instanceof Setting setting) {
            return !ledger.disturbed(setting, place);
        }
        if (item instanceof Joint) {
            return ledger.released(item, place) <= 0;
        }
        return item instanceof EnergySource ? ownIsolations(item) <= 0 : inPlace(item);
    }

    private Stream<Part> parts() {
        return of(Part.class);
    }

    private Stream<Setting> settings() {
        return of(Setting.class);
    }

    private Stream<EnergySource> sources() {
        return of(EnergySource.class);
    }

    private <T> Stream<T> of(Class<T> kind) {
        return ledger.procedure.items().stream().filter(kind::isInstance).map(kind::cast);
    }
}
