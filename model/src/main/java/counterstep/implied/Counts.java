package counterstep.implied;

import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Verb;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Links between actions on one item: what moves a piece comes after what moved it before. What is
 * thrown away or put back lay on the mat before; new ones go in when the old ones are thrown away,
 * so that they do not get mixed (common practice).
 */
final class Counts {
    private static final Set<Verb> FROM_THE_MAT =
            EnumSet.of(Verb.REINSTALL, Verb.BRING_IN, Verb.DISCARD);

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
            onTheMat(item.id(), acts);
            newForOld(item.id(), acts);
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

    private void onTheMat(ItemId item, List<Act> acts) {
        Deque<Act> mat = new ArrayDeque<>();
        for (Act act : acts) {
            if (act.verb() == Verb.REMOVE || act.verb() == Verb.TAKE_AWAY) {
                push(mat, act);
            } else if (FROM_THE_MAT.contains(act.verb())) {
                take(mat, act, item);
            }
        }
    }

    private void newForOld(ItemId item, List<Act> acts) {
        Deque<Act> thrownAway = new ArrayDeque<>();
        for (Act act : acts) {
            if (act.verb() == Verb.DISCARD) {
                push(thrownAway, act);
            } else if (act.verb() == Verb.FIT_NEW) {
                take(thrownAway, act, item);
            }
        }
    }

    private static void push(Deque<Act> lying, Act act) {
        for (int one = 0; one < act.action().count(); one++) {
            lying.push(act);
        }
    }

    private void take(Deque<Act> lying, Act act, ItemId item) {
        for (int one = 0; one < act.action().count() && !lying.isEmpty(); one++) {
            add(lying.pop(), act, item);
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
