package counterstep.implied;

import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;

/**
 * What takes a piece away from where it was found wants what brings it back, and the other way
 * round. A piece goes away in up to two grades (loose or aside, then out or away); each grade back
 * belongs to what took it that grade away last, so that 'aside and back' can do without the 'away
 * and in again' between them.
 */
final class Excursions {
    private final Pieces pieces;
    private final Sentences sentences;
    private final Wanting wanting;

    Excursions(Pieces pieces, Wanting wanting) {
        this.pieces = pieces;
        this.sentences = new Sentences(pieces.index());
        this.wanting = wanting;
    }

    void follow() {
        for (Item item : pieces.index().procedure().items()) {
            pieces.of(item.id()).forEach(piece -> follow(item.id(), piece));
        }
    }

    private void follow(ItemId item, Piece piece) {
        List<List<Act>> away = List.of(new ArrayList<>(), new ArrayList<>());
        int grade = 0;
        for (Act move : piece.moves()) {
            int next = grade(piece.placeAfter(move));
            if (next > grade) {
                goesAway(item, move, away, grade, next);
            } else {
                comesBack(item, move, away.subList(next, grade));
            }
            grade = next;
        }
    }

    /** A removal takes loose ones and tight ones alike, so it wants no loosening before it. */
    private void goesAway(ItemId item, Act move, List<List<Act>> away, int grade, int next) {
        int from = move.verb() == Verb.REMOVE ? 0 : grade;
        if (from > 0) {
            Act before = last(away.get(from - 1));
            wanting.wants(move, before, () -> sentences.order(before, move, item));
        }
        away.subList(from, next).forEach(acts -> acts.add(move));
    }

    private void comesBack(ItemId item, Act move, List<List<Act>> grades) {
        for (List<Act> acts : grades) {
            Act took = last(acts);
            wanting.wants(move, took, () -> sentences.order(took, move, item));
            acts.forEach(act -> wanting.wants(act, move, () -> sentences.order(act, move, item)));
            acts.clear();
        }
    }

    private static Act last(List<Act> acts) {
        return acts.get(acts.size() - 1);
    }

    private static int grade(Place place) {
        return switch (place) {
            case HOME -> 0;
            case LOOSE, ASIDE, LAID -> 1;
            case OFF -> 2;
        };
    }

    /** What comes to lie on the mat wants what takes it from there, and the old the new. */
    void clearTheMat() {
        for (Item item : pieces.index().procedure().items()) {
            List<Act> acts = pieces.acts(item.id());
            Mat.fromTheMat(acts).forEach(one -> both(item.id(), one.laid(), one.taken()));
            Mat.newForOld(acts).forEach(one -> both(item.id(), one.laid(), one.taken()));
        }
    }

    private void both(ItemId item, Act laid, Act taken) {
        wanting.wantEachOther(laid, taken, () -> sentences.order(laid, taken, item));
    }
}
