package counterstep.implied;

import static counterstep.implied.Place.ASIDE;
import static counterstep.implied.Place.HOME;
import static counterstep.implied.Place.LAID;
import static counterstep.implied.Place.LOOSE;
import static counterstep.implied.Place.OFF;

import counterstep.ledger.Needs.Need;
import counterstep.model.ItemId;
import counterstep.model.Verb;
import java.util.EnumSet;
import java.util.Set;

/**
 * Links from 'held by', 'tethered by' and 'covers': where an action needs a piece of another item
 * in some place and page order has it there, the action stays between the moves that put it there
 * and take it from there. Where page order has it elsewhere, a check of the order tells.
 */
final class Neighbours {
    private final Pieces pieces;
    private final Sentences sentences;
    private final Links links;

    Neighbours(Pieces pieces, Links links) {
        this.pieces = pieces;
        this.sentences = new Sentences(pieces.index());
        this.links = links;
    }

    void link() {
        pieces.askings().forEach(asking -> link(asking.act(), asking.need(), asking.item()));
    }

    private void link(Act act, Need need, ItemId item) {
        Set<Place> wanted = wanted(act, need);
        for (Piece piece : pieces.of(need.about())) {
            if (wanted.contains(piece.placeBefore(act))) {
                links.between(
                        piece, wanted, act, () -> sentences.need(need.kind(), item, need.about()));
            }
        }
    }

    /** Nowhere for power and settings, which have rules of their own. */
    private static Set<Place> wanted(Act act, Need need) {
        return switch (need.kind()) {
            case REACH -> EnumSet.of(ASIDE, OFF);
            case HOLD, TETHER ->
                    need.looseIsEnough()
                            ? EnumSet.of(LOOSE, ASIDE, OFF, LAID)
                            : EnumSet.of(ASIDE, OFF, LAID);
            case SEAT, CLOSE -> EnumSet.of(HOME);
            case LEAD -> EnumSet.of(HOME, ASIDE);
            case ENERGY, NOTE -> EnumSet.noneOf(Place.class);
            case PRECONDITION ->
                    act.verb() == Verb.LAY ? EnumSet.of(ASIDE, OFF) : EnumSet.of(HOME, LOOSE);
        };
    }
}
