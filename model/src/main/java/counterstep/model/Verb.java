package counterstep.model;

import java.util.Arrays;
import java.util.Optional;

/**
 * What an action does to its item. The effect on the item's state is the ledger's business; the
 * word is what stands in files, on screen and on paper.
 */
public enum Verb {
    LOOSEN("loosen"),
    TIGHTEN("tighten"),
    REMOVE("remove"),
    REINSTALL("reinstall"),
    DISCARD("discard"),
    FIT_NEW("fit new"),
    UNCLIP("unclip"),
    CLIP("clip"),
    CUT("cut"),
    DISCONNECT("disconnect"),
    RECONNECT("reconnect"),
    RELEASE("release"),
    LAY("lay"),
    PRESS("press"),
    REJOIN("rejoin"),
    MOVE_ASIDE("move aside"),
    RETURN("return"),
    TAKE_AWAY("take away"),
    BRING_IN("bring in"),
    NOTE("note"),
    RESTORE("restore"),
    ISOLATE("isolate"),
    PROVE_DEAD("prove dead"),
    RESTORE_POWER("restore power"),
    APPLY("apply"),
    CLEAN("clean"),
    CHECK("check"),
    ALIGN("align"),
    WAIT("wait");

    private final String word;

    Verb(String word) {
        this.word = word;
    }

    /** The word in files and on screen. */
    public String word() {
        return word;
    }

    /** The verb of that word, if there is one. */
    public static Optional<Verb> of(String word) {
        return Arrays.stream(values()).filter(verb -> verb.word.equals(word)).findFirst();
    }

    /** Whether the verb leaves the state of its item as it is, so that it may name none. */
    public boolean stateless() {
        return switch (this) {
            case APPLY, CLEAN, CHECK, ALIGN, WAIT -> true;
            case LOOSEN, TIGHTEN, REMOVE, REINSTALL, DISCARD, FIT_NEW, UNCLIP, CLIP, CUT -> false;
            case DISCONNECT, RECONNECT, RELEASE, LAY, PRESS, REJOIN, MOVE_ASIDE, RETURN -> false;
            case TAKE_AWAY, BRING_IN, NOTE, RESTORE, ISOLATE, PROVE_DEAD, RESTORE_POWER -> false;
        };
    }

    /** The verb that undoes this one; empty where nothing is undone. */
    public Optional<Verb> inverse() {
        return Optional.ofNullable(
                switch (this) {
                    case LOOSEN -> TIGHTEN;
                    case TIGHTEN -> LOOSEN;
                    case REMOVE -> REINSTALL;
                    case REINSTALL -> REMOVE;
                    case DISCARD, CUT -> FIT_NEW;
                    case UNCLIP -> CLIP;
                    case CLIP -> UNCLIP;
                    case DISCONNECT -> RECONNECT;
                    case RECONNECT -> DISCONNECT;
                    case RELEASE -> PRESS;
                    case PRESS, REJOIN -> RELEASE;
                    case MOVE_ASIDE -> RETURN;
                    case RETURN -> MOVE_ASIDE;
                    case TAKE_AWAY -> BRING_IN;
                    case BRING_IN -> TAKE_AWAY;
                    case NOTE -> RESTORE;
                    case ISOLATE -> RESTORE_POWER;
                    case RESTORE_POWER -> ISOLATE;
                    case FIT_NEW, LAY, RESTORE, PROVE_DEAD -> null;
                    case APPLY, CLEAN, CHECK, ALIGN, WAIT -> null;
                });
    }
}
