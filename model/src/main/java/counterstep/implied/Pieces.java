package counterstep.implied;

import counterstep.ledger.FailureKind;
import counterstep.ledger.Needs;
import counterstep.ledger.Turn;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Step;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The pieces of all items as page order moves them. A putting back moves those taken off last, a
 * removal those that nobody touched so far; where too few are there, those that are.
 */
final class Pieces {
    private final Index index;
    private final Needs needs;
    private final List<Act> acts = new ArrayList<>();
    private final List<Asking> askings = new ArrayList<>();
    private final Map<ItemId, List<Act>> actsOn = new HashMap<>();
    private final Map<ItemId, List<Asking>> askingsAbout = new HashMap<>();
    private final Map<ItemId, List<Piece>> pieces = new HashMap<>();

    Pieces(Index index) {
        this.index = index;
        for (Item item : index.procedure().items()) {
            pieces.put(
                    item.id(),
                    IntStream.range(0, item.quantity()).mapToObj(one -> new Piece()).toList());
        }
        for (Step step : index.procedure().steps()) {
            step.actions().forEach(action -> acts.add(new Act(acts.size(), step.id(), action)));
        }
        this.needs = Needs.of(index);
        for (Act act : acts) {
            act.action().item().ifPresent(item -> enter(act, index.item(item)));
            needs.of(act.action()).forEach(need -> enter(new Asking(act, need)));
        }
    }

    private void enter(Act act, Item item) {
        actsOn.computeIfAbsent(item.id(), none -> new ArrayList<>()).add(act);
        move(act, item);
    }

    private void enter(Asking asking) {
        askings.add(asking);
        askingsAbout.computeIfAbsent(asking.need().about(), none -> new ArrayList<>()).add(asking);
    }

    private void move(Act act, Item item) {
        Move move = Move.of(act.action(), item);
        Comparator<Piece> preferred =
                Comparator.comparingInt(piece -> move.from().indexOf(piece.place()));
        Comparator<Piece> longestThere = Comparator.comparingInt(Piece::movedAt);
        boolean back = Turn.of(act.verb()) == Turn.BACK;
        of(item.id()).stream()
                .filter(piece -> move.from().contains(piece.place()))
                .sorted(preferred.thenComparing(back ? longestThere.reversed() : longestThere))
                .limit(act.action().count())
                .toList()
                .forEach(piece -> piece.move(act, move.to()));
    }

    Index index() {
        return index;
    }

    Needs needs() {
        return needs;
    }

    /** All actions in page order. */
    List<Act> acts() {
        return acts;
    }

    /** What actions need of items other than their own. */
    List<Asking> askings() {
        return askings;
    }

    /** The actions that need something of an item. */
    List<Asking> askings(FailureKind kind, ItemId about) {
        return askingsAbout.getOrDefault(about, List.of()).stream()
                .filter(asking -> asking.need().kind() == kind)
                .toList();
    }

    /** Those on one item. */
    List<Act> acts(ItemId item) {
        return actsOn.getOrDefault(item, List.of());
    }

    /** Those on one item with one verb. */
    List<Act> acts(ItemId item, Verb verb) {
        return acts(item).stream().filter(act -> act.verb() == verb).toList();
    }

    List<Piece> of(ItemId item) {
        return pieces.get(item);
    }
}
