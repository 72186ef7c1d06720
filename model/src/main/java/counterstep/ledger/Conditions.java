package counterstep.ledger;

import static counterstep.ledger.Counter.MISSING;
import static counterstep.ledger.Counter.NOTED;
import static counterstep.ledger.Counter.OFF;
import static counterstep.ledger.Counter.SAFE;

import counterstep.model.Action;
import counterstep.model.EnergySource;
import counterstep.model.Hold;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Setting;
import counterstep.model.Verb;
import java.util.stream.Stream;

/** The conditions on an action besides its own precondition. */
final class Conditions {
    private final Index index;
    private final Surroundings around;

    Conditions(Index index, Surroundings around) {
        this.index = index;
        this.around = around;
    }

    /** All that an action on an item asks of other items. */
    Stream<Demand> of(Action action, Item item) {
        return Stream.of(
                        others(action, item),
                        reach(action, item),
                        hold(action, item),
                        seat(action, item),
                        tether(action, item),
                        lead(action, item),
                        close(action, item),
                        energy(action, item),
                        note(action, item))
                .flatMap(demands -> demands);
    }

    /** Laying asks the held part off its place; restoring asks what the setting belongs to on. */
    private Stream<Demand> others(Action action, Item item) {
        FailureKind kind = FailureKind.PRECONDITION;
        if (action.verb() == Verb.LAY) {
            return around.heldBy(item.id()).stream()
                    .map(part -> Demand.atLeast(kind, part.id(), part.quantity(), OFF));
        }
        if (action.verb() == Verb.RESTORE && item instanceof Setting setting) {
            return setting.belongsTo().stream().map(index::item).flatMap(this::inPlace);
        }
        return Stream.empty();
    }

    /** In its place, be it only loose: a height is set before its screws are tightened. */
    private Stream<Demand> inPlace(Item item) {
        return Rest.finished(FailureKind.PRECONDITION, item).stream()
                .filter(demand -> !demand.terms().contains(Term.minus(Counter.LOOSE)));
    }

    private Stream<Demand> reach(Action action, Item item) {
        if (!atItsPlace(action.verb())) {
            return Stream.empty();
        }
        return around.coversOf(item.id()).stream()
                .map(cover -> Demand.atLeast(FailureKind.REACH, cover.id(), cover.quantity(), OFF));
    }

    /** What is discarded lies on the mat; a wait touches nothing. */
    private static boolean atItsPlace(Verb verb) {
        return verb != Verb.DISCARD && verb != Verb.WAIT;
    }

    private Stream<Demand> hold(Action action, Item item) {
        boolean leaves = action.verb() == Verb.MOVE_ASIDE || action.verb() == Verb.REMOVE;
        if (!leaves || !(item instanceof Part part)) {
            return Stream.empty();
        }
        return part.heldBy().stream().map(this::released);
    }

    private Demand released(Hold hold) {
        return Rest.released(FailureKind.HOLD, index.item(hold.holder()), hold.looseIsEnough());
    }

    private Stream<Demand> seat(Action action, Item item) {
        if (!seats(action, item)) {
            return Stream.empty();
        }
        return around.heldBy(item.id()).stream()
                .map(part -> Demand.atMost(FailureKind.SEAT, part.id(), 0, OFF));
    }

    /** Tightening seats only what is released by loosening alone; the rest was seated before. */
    private boolean seats(Action action, Item item) {
        ItemKind kind = ItemKind.of(item);
        if (kind == ItemKind.PART) {
            return false;
        }
        if (action.verb() == Verb.TIGHTEN) {
            return kind == ItemKind.CAPTIVE || around.freesWhenLoose(item.id());
        }
        return Turn.of(action.verb()) == Turn.BACK;
    }

    private Stream<Demand> tether(Action action, Item item) {
        boolean goes = action.verb() == Verb.TAKE_AWAY || action.verb() == Verb.REMOVE;
        if (!goes || !(item instanceof Part part)) {
            return Stream.empty();
        }
        return part.tetheredBy().stream()
                .map(tether -> Rest.released(FailureKind.TETHER, index.item(tether), false));
    }

    private Stream<Demand> lead(Action action, Item item) {
        if (!seats(action, item)) {
            return Stream.empty();
        }
        return around.tetheredBy(item.id()).stream()
                .map(part -> Demand.atMost(FailureKind.LEAD, part.id(), 0, MISSING));
    }

    private Stream<Demand> close(Action action, Item item) {
        boolean covers =
                action.verb() == Verb.RETURN
                        || action.verb() == Verb.REINSTALL
                        || (action.verb() == Verb.FIT_NEW && !action.aside());
        if (!covers || !(item instanceof Part part)) {
            return Stream.empty();
        }
        return part.covers().stream()
                .map(index::item)
                .flatMap(covered -> Rest.finished(FailureKind.CLOSE, covered).stream());
    }

    private Stream<Demand> energy(Action action, Item item) {
        boolean test = action.poweredTest() && action.verb().stateless();
        if (test || !atItsPlace(action.verb())) {
            return Stream.empty();
        }
        return around.sourcesFeeding(item.id()).stream()
                .filter(source -> !isolates(action, item.id(), source))
                .map(source -> Demand.atLeast(FailureKind.ENERGY, source.id(), 1, SAFE));
    }

    /** The action that isolates a source may touch what the source feeds. */
    private boolean isolates(Action action, ItemId item, EnergySource source) {
        return action.verb() == Verb.DISCONNECT
                && around.chain(source).stream()
                        .anyMatch(link -> link.isolatedBy().filter(item::equals).isPresent());
    }

    private Stream<Demand> note(Action action, Item item) {
        if (!Turn.disturbs(action.verb())) {
            return Stream.empty();
        }
        return around.settingsOf(item.id()).stream()
                .map(setting -> Demand.atLeast(FailureKind.NOTE, setting.id(), 1, NOTED));
    }
}
