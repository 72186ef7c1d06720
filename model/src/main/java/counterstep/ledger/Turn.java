package counterstep.ledger;

import counterstep.model.Verb;

/** Whether a verb takes apart, puts back, or neither. */
public enum Turn {
    /** Takes off, opens, loosens, notes, isolates. */
    APART,
    /** Puts back, closes, tightens, restores. */
    BACK,
    /** Leaves the device as far open as it was. */
    NEITHER;

    /** The turn of a verb. */
    public static Turn of(Verb verb) {
        return switch (verb) {
            case LOOSEN, REMOVE, UNCLIP, CUT, DISCONNECT, RELEASE -> APART;
            case MOVE_ASIDE, TAKE_AWAY, NOTE, ISOLATE -> APART;
            case TIGHTEN, REINSTALL, FIT_NEW, CLIP, RECONNECT, PRESS, REJOIN -> BACK;
            case RETURN, BRING_IN, RESTORE, RESTORE_POWER -> BACK;
            case DISCARD, LAY, PROVE_DEAD, APPLY, CLEAN, CHECK, ALIGN, WAIT -> NEITHER;
        };
    }

    /**
     * Whether the verb disturbs a setting that belongs to its item: anything that loosens or opens
     * it or takes it off its place.
     */
    static boolean disturbs(Verb verb) {
        return switch (verb) {
            case LOOSEN, REMOVE, UNCLIP, CUT, DISCONNECT, RELEASE, MOVE_ASIDE -> true;
            case TAKE_AWAY, NOTE, ISOLATE, TIGHTEN, REINSTALL, FIT_NEW, CLIP -> false;
            case RECONNECT, PRESS, REJOIN, RETURN, BRING_IN, RESTORE, RESTORE_POWER -> false;
            case DISCARD, LAY, PROVE_DEAD, APPLY, CLEAN, CHECK, ALIGN, WAIT -> false;
        };
    }
}
