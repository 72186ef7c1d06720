package counterstep.implied;

import counterstep.ledger.FailureKind;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Setting;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What disturbs a setting wants it noted before and restored after. */
final class Disturbances {
    private final Pieces pieces;
    private final Sentences sentences;
    private final Wanting wanting;

    Disturbances(Pieces pieces, Wanting wanting) {
        this.pieces = pieces;
        this.sentences = new Sentences(pieces.index());
        this.wanting = wanting;
    }

    /** Adds, by restoring, the disturbances of which it wants one: there is nothing else to do. */
    void follow(Map<Act, List<Act>> oneOf) {
        for (Item item : pieces.index().procedure().items()) {
            if (item instanceof Setting setting) {
                follow(setting.id(), oneOf);
            }
        }
    }

    private void follow(ItemId setting, Map<Act, List<Act>> oneOf) {
        List<Act> notes = pieces.acts(setting, Verb.NOTE);
        List<Act> restores = pieces.acts(setting, Verb.RESTORE);
        List<Asking> disturbing = pieces.askings(FailureKind.NOTE, setting);
        for (Asking one : disturbing) {
            Act act = one.act();
            before(notes, act).ifPresent(note -> wants(act, note, one, setting));
            after(restores, act).ifPresent(restore -> wants(act, restore, one, setting));
        }
        for (Act note : notes) {
            after(restores, note)
                    .ifPresent(
                            restore ->
                                    wanting.wantEachOther(
                                            note,
                                            restore,
                                            () -> sentences.order(note, restore, setting)));
        }
        for (Act restore : restores) {
            List<Act> before = new ArrayList<>();
            disturbing.stream()
                    .map(Asking::act)
                    .filter(act -> act.isBefore(restore))
                    .forEach(before::add);
            oneOf.put(restore, before);
        }
    }

    private void wants(Act act, Act other, Asking disturbing, ItemId setting) {
        wanting.wants(
                act, other, () -> sentences.need(FailureKind.NOTE, disturbing.item(), setting));
    }

    private static Optional<Act> before(List<Act> acts, Act act) {
        return acts.stream().filter(one -> one.isBefore(act)).reduce((one, later) -> later);
    }

    private static Optional<Act> after(List<Act> acts, Act act) {
        return acts.stream().filter(act::isBefore).findFirst();
    }
}
