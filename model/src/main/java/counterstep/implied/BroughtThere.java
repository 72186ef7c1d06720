package counterstep.implied;

import java.util.Set;
import java.util.function.Supplier;

/**
 * Of the links around an action, those from what brought a piece where the action needs it. Where
 * the piece may as well lie as found, nothing has to bring it there.
 */
final class BroughtThere extends Links {
    @Override
    void between(Piece piece, Set<Place> wanted, Act act, Supplier<String> reason) {
        if (!wanted.contains(Place.HOME)) {
            piece.broughtTo(wanted, act).ifPresent(before -> add(before, act, reason));
        }
    }
}
