package counterstep.implied;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One of the pieces that an item counts, and the actions that move it, in page order. */
final class Piece {
    private final List<Act> moves = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();

    void move(Act act, Place to) {
        moves.add(act);
        places.add(to);
    }

    /** Where it is after all that moved it so far. */
    Place place() {
        return places.isEmpty() ? Place.HOME : places.get(places.size() - 1);
    }

    /** When it was moved last; -1 if never. */
    int movedAt() {
        return moves.isEmpty() ? -1 : moves.get(moves.size() - 1).number();
    }

    /** Where it is when an action starts. */
    Place placeBefore(Act act) {
        int before = countBefore(act);
        return before == 0 ? Place.HOME : places.get(before - 1);
    }

    /** What moved it last before an action. */
    Optional<Act> movedBefore(Act act) {
        int before = countBefore(act);
        return before == 0 ? Optional.empty() : Optional.of(moves.get(before - 1));
    }

    /** What moves it next after an action. */
    Optional<Act> movedAfter(Act act) {
        return moves.stream().filter(move -> act.isBefore(move)).findFirst();
    }

    /** What brought it to these places, where it is when an action starts. */
    Optional<Act> broughtTo(Set<Place> wanted, Act act) {
        int move = countBefore(act) - 1;
        while (move > 0 && wanted.contains(places.get(move - 1))) {
            move--;
        }
        boolean asFound = move < 0 || move == 0 && wanted.contains(Place.HOME);
        return asFound ? Optional.empty() : Optional.of(moves.get(move));
    }

    /** What takes it from these places, where it is when an action starts. */
    Optional<Act> takenFrom(Set<Place> wanted, Act act) {
        for (int move = countBefore(act); move < moves.size(); move++) {
            if (act.isBefore(moves.get(move)) && !wanted.contains(places.get(move))) {
                return Optional.of(moves.get(move));
            }
        }
        return Optional.empty();
    }

    /** Where it is after all that moved it up to an action. */
    Place placeAfter(Act act) {
        int upTo = (int) moves.stream().filter(move -> !act.isBefore(move)).count();
        return upTo == 0 ? Place.HOME : places.get(upTo - 1);
    }

    private int countBefore(Act act) {
        int before = moves.size();
        while (before > 0 && !moves.get(before - 1).isBefore(act)) {
            before--;
        }
        return before;
    }

    /** All that moves it, in page order. */
    List<Act> moves() {
        return moves;
    }
}
