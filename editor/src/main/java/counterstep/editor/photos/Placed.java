package counterstep.editor.photos;

import counterstep.model.Callout;
import counterstep.model.CalloutShape;
import counterstep.model.Extras;
import counterstep.model.Item;
import counterstep.model.ItemId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Callouts of one photo with one of them added, moved, tied or gone; places in parts of it. */
final class Placed {
    private Placed() {}

    /** One more, with the next number, pointing at an item or at none. */
    static List<Callout> added(
            List<Callout> callouts,
            Optional<ItemId> item,
            CalloutShape shape,
            double x,
            double y,
            double toX,
            double toY) {
        int number = callouts.stream().mapToInt(Callout::number).max().orElse(0) + 1;
        List<Callout> more = new ArrayList<>(callouts);
        more.add(
                new Callout(
                        number,
                        shape,
                        within(x),
                        within(y),
                        within(shape == CalloutShape.POINT ? x : toX),
                        within(shape == CalloutShape.POINT ? y : toY),
                        item,
                        Extras.NONE));
        return more;
    }

    /** One moved, as a whole. */
    static List<Callout> moved(List<Callout> callouts, int number, double right, double down) {
        return changed(
                callouts,
                number,
                old ->
                        at(
                                old,
                                old.x() + right,
                                old.y() + down,
                                old.toX() + right,
                                old.toY() + down,
                                old.item()));
    }

    /** The far corner of a box, or the head of an arrow, moved. */
    static List<Callout> stretched(List<Callout> callouts, int number, double right, double down) {
        return changed(
                callouts,
                number,
                old -> at(old, old.x(), old.y(), old.toX() + right, old.toY() + down, old.item()));
    }

    /** One that points at an item, or at none. */
    static List<Callout> tied(List<Callout> callouts, int number, Optional<Item> item) {
        Optional<ItemId> id = item.map(Item::id);
        return changed(
                callouts, number, old -> at(old, old.x(), old.y(), old.toX(), old.toY(), id));
    }

    /** All but one; the others keep their numbers, which the text may speak of. */
    static List<Callout> without(List<Callout> callouts, int number) {
        return callouts.stream().filter(one -> one.number() != number).toList();
    }

    private static Callout at(
            Callout old, double x, double y, double toX, double toY, Optional<ItemId> item) {
        return new Callout(
                old.number(),
                old.shape(),
                within(x),
                within(y),
                within(toX),
                within(toY),
                item,
                old.extras());
    }

    private static double within(double part) {
        return Math.round(Math.max(0, Math.min(1, part)) * 1000) / 1000.0;
    }

    private static List<Callout> changed(
            List<Callout> callouts, int number, java.util.function.UnaryOperator<Callout> change) {
        return callouts.stream()
                .map(one -> one.number() == number ? change.apply(one) : one)
                .toList();
    }
}
