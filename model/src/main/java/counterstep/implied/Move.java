package counterstep.implied;

import static counterstep.implied.Place.ASIDE;
import static counterstep.implied.Place.HOME;
import static counterstep.implied.Place.LAID;
import static counterstep.implied.Place.LOOSE;
import static counterstep.implied.Place.OFF;

import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Part;
import java.util.List;

/**
 * From where to where an action moves pieces of its item; the ledger says when it may.
 *
 * @param from where they may be before, preferred first; nowhere where the action moves none
 * @param to where they are after
 */
record Move(List<Place> from, Place to) {
    private static final Move NONE = new Move(List.of(), HOME);

    static Move of(Action action, Item item) {
        return switch (action.verb()) {
            case LOOSEN -> new Move(List.of(HOME), LOOSE);
            case TIGHTEN -> new Move(List.of(LOOSE), HOME);
            case REMOVE -> captive(item) ? NONE : new Move(List.of(LOOSE, HOME), OFF);
            case REINSTALL -> captive(item) ? NONE : new Move(List.of(OFF), seated(action, item));
            case FIT_NEW -> captive(item) ? NONE : new Move(List.of(OFF), fitted(action, item));
            case UNCLIP, CUT, DISCONNECT, RELEASE, ISOLATE -> new Move(List.of(HOME), OFF);
            case CLIP, RECONNECT, REJOIN, RESTORE_POWER -> new Move(List.of(OFF), HOME);
            case LAY -> new Move(List.of(OFF), LAID);
            case PRESS -> new Move(List.of(LAID), HOME);
            case MOVE_ASIDE -> new Move(List.of(HOME), ASIDE);
            case TAKE_AWAY -> new Move(List.of(ASIDE), OFF);
            case BRING_IN -> new Move(List.of(OFF), ASIDE);
            case RETURN -> new Move(List.of(ASIDE), HOME);
            case DISCARD, NOTE, RESTORE, PROVE_DEAD -> NONE;
            case APPLY, CLEAN, CHECK, ALIGN, WAIT -> NONE;
        };
    }

    private static boolean captive(Item item) {
        return item instanceof FastenerSet set && set.captive();
    }

    private static Place seated(Action action, Item item) {
        return item instanceof FastenerSet && action.fingerTight() ? LOOSE : HOME;
    }

    private static Place fitted(Action action, Item item) {
        return item instanceof Part && action.aside() ? ASIDE : seated(action, item);
    }
}
