package counterstep.implied;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A time on the page in which a source is isolated by one thing: its own action, or its connector
 * that is wholly open.
 *
 * @param pieces of the source or connector, all off
 * @param since number of the action that isolated it
 * @param until number of the action that brings power back; the greatest number where none does
 */
record Isolation(List<Piece> pieces, int since, int until) {
    /** The time that an action falls into; empty where it falls into none. */
    static Optional<Isolation> of(List<Piece> pieces, Act act) {
        if (pieces.stream().anyMatch(piece -> piece.placeBefore(act) != Place.OFF)) {
            return Optional.empty();
        }
        int since =
                pieces.stream()
                        .flatMap(piece -> piece.movedBefore(act).stream())
                        .mapToInt(Act::number)
                        .max()
                        .orElse(0);
        int until =
                pieces.stream()
                        .flatMap(piece -> piece.movedAfter(act).stream())
                        .mapToInt(Act::number)
                        .min()
                        .orElse(Integer.MAX_VALUE);
        return Optional.of(new Isolation(pieces, since, until));
    }

    /** Keeps an action within this time; the one that isolates is part of it. */
    void keeps(Act act, Links links, Supplier<String> reason) {
        if (act.number() > since) {
            pieces.forEach(piece -> links.between(piece, EnumSet.of(Place.OFF), act, reason));
        }
    }
}
