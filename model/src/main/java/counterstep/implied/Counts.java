package counterstep.implied;

import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Verb;
import java.util.List;

/**
 * Links between actions on one item: what moves a piece comes after what moved it before. What is
 * thrown away or put back lay on the mat before; new ones go in when the old ones are thrown away,
 * so that they do not get mixed (common practice).
 */
final class Counts {
    private final Pieces pieces;
    private final Sentences sentences;
    private final Links links;

    Counts(Pieces pieces, Links links) {
        this.pieces = pieces;
        this.sentences = new Sentences(pieces.index());
        this.links = links;
    }

    void link() {
        for (Item item : pieces.index().procedure().items()) {
            List<Act> acts = pieces.acts(item.id());
            pieces.of(item.id()).forEach(piece -> moves(item.id(), piece));
            Mat.fromTheMat(acts).forEach(one -> add(one.laid(), one.taken(), item.id()));
            Mat.newForOld(acts).forEach(one -> add(one.laid(), one.taken(), item.id()));
            if (item instanceof FastenerSet set && !set.captive()) {
                looseOnesFirst(item.id(), acts);
            }
        }
    }

    private void moves(ItemId item, Piece piece) {
        for (int move = 1; move < piece.moves().size(); move++) {
            add(piece.moves().get(move - 1), piece.moves().get(move), item);
        }
    }

    /**
     * A removal takes loose ones first, so how many stay loose depends on the order between
     * removals and what loosens or tightens.
     */
    private void looseOnesFirst(ItemId item, List<Act> acts) {
        for (Act removal : acts) {
            if (removal.verb() == Verb.REMOVE) {
                acts.stream()
                        .filter(Counts::changesLoose)
                        .forEach(
                                act -> {
                                    boolean first = act.number() < removal.number();
                                    add(first ? act : removal, first ? removal : act, item);
                                });
            }
        }
    }

    private static boolean changesLoose(Act act) {
        return act.verb() == Verb.LOOSEN
                || act.verb() == Verb.TIGHTEN
                || act.action().fingerTight();
    }

    private void add(Act earlier, Act later, ItemId item) {
        links.add(earlier, later, () -> sentences.order(earlier, later, item));
    }
}
