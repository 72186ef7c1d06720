package counterstep.ledger;

import counterstep.model.Action;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.List;
import java.util.Optional;

/**
 * What most likely happens next to an item: what is on is taken off, what is out is put back the
 * way it came off, what is finger-tight is tightened.
 */
final class NextAction {
    private final Ledger ledger;
    private final Item item;
    private final ItemState state;

    private NextAction(Ledger ledger, Item item, StepId after) {
        this.ledger = ledger;
        this.item = item;
        this.state = ledger.after(item.id(), after);
    }

    /** The action that continues a step. */
    static Action of(Ledger ledger, Index index, ItemId item, StepId step) {
        NextAction next = new NextAction(ledger, index.item(item), step);
        Verb verb = next.verb(index, index.page(step));
        return Action.of(verb, item, next.count(verb));
    }

    private Verb verb(Index index, int page) {
        Optional<Verb> last =
                ledger.happenings(item.id()).stream()
                        .filter(happening -> index.page(happening.step()) <= page)
                        .map(happening -> happening.what().verb())
                        .filter(verb -> verb == Verb.DISCARD || Turn.of(verb) != Turn.NEITHER)
                        .reduce((one, other) -> other);
        if (last.filter(Verb.DISCARD::equals).isPresent()) {
            return Verb.FIT_NEW;
        }
        Optional<Verb> back =
                last.filter(verb -> Turn.of(verb) == Turn.APART).flatMap(Verb::inverse);
        if (back.isEmpty() && state instanceof FastenerState && Lies.looseOrOpen(state) > 0) {
            return Verb.TIGHTEN;
        }
        return back.orElseGet(this::apart);
    }

    /** The verb that takes the item off its place, the whole way. */
    private Verb apart() {
        List<Verb> fitting =
                FittingVerbs.of(item).stream().filter(verb -> Turn.of(verb) == Turn.APART).toList();
        return fitting.stream()
                .filter(verb -> verb != Verb.LOOSEN)
                .findFirst()
                .orElseGet(() -> FittingVerbs.of(item).get(0));
    }

    private int count(Verb verb) {
        int mat = Lies.onMat(state);
        if (verb == Verb.REINSTALL && mat > 0) {
            return mat;
        }
        int open = Lies.looseOrOpen(state);
        if (Turn.of(verb) == Turn.BACK && open > 0) {
            return open;
        }
        return Math.max(1, item.quantity() - (Turn.of(verb) == Turn.APART ? mat : 0));
    }
}
