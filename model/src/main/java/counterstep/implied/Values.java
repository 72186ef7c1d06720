package counterstep.implied;

import counterstep.ledger.FailureKind;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Setting;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;

/**
 * Links from settings: a value is noted before it is disturbed, and restored after the last
 * disturbance and before a cover goes on over it.
 */
final class Values {
    private final Pieces pieces;
    private final Sentences sentences;
    private final Links links;

    Values(Pieces pieces, Links links) {
        this.pieces = pieces;
        this.sentences = new Sentences(pieces.index());
        this.links = links;
    }

    void link() {
        for (Item item : pieces.index().procedure().items()) {
            if (item instanceof Setting setting) {
                link(setting.id());
            }
        }
    }

    private void link(ItemId setting) {
        List<Act> notes = pieces.acts(setting, Verb.NOTE);
        List<Act> restores = new ArrayList<>(pieces.acts(setting, Verb.RESTORE));
        restores.removeIf(restore -> notes.stream().noneMatch(note -> note.isBefore(restore)));
        List<Asking> disturbing = pieces.askings(FailureKind.NOTE, setting);
        for (Act note : notes) {
            restores.forEach(restore -> inPageOrder(note, restore, setting));
            disturbing.stream()
                    .filter(one -> note.isBefore(one.act()))
                    .forEach(one -> links.add(note, one.act(), () -> belongs(one, setting)));
        }
        for (Asking one : disturbing) {
            disturbed(one, restores, setting);
        }
        for (Asking closing : pieces.askings(FailureKind.CLOSE, setting)) {
            covered(closing, restores, disturbing);
        }
    }

    private void inPageOrder(Act one, Act other, ItemId setting) {
        Act earlier = one.isBefore(other) ? one : other;
        Act later = one.isBefore(other) ? other : one;
        links.add(earlier, later, () -> sentences.order(earlier, later, setting));
    }

    /**
     * Restored after it; by the restoring before it too, unless none follows, which is a fault of
     * the page.
     */
    private void disturbed(Asking one, List<Act> restores, ItemId setting) {
        Act act = one.act();
        List<Act> after = restores.stream().filter(act::isBefore).toList();
        if (!after.isEmpty()) {
            links.add(act, after.get(0), () -> belongs(one, setting));
            restores.stream()
                    .filter(restore -> restore.isBefore(act))
                    .forEach(restore -> links.add(restore, act, () -> belongs(one, setting)));
        }
    }

    private void covered(Asking closing, List<Act> restores, List<Asking> disturbing) {
        restores.stream()
                .filter(restore -> restore.isBefore(closing.act()))
                .forEach(restore -> links.add(restore, closing.act(), () -> covers(closing)));
        disturbing.stream()
                .filter(one -> closing.act().isBefore(one.act()))
                .forEach(one -> links.add(closing.act(), one.act(), () -> covers(closing)));
    }

    private String belongs(Asking disturbing, ItemId setting) {
        return sentences.need(FailureKind.NOTE, disturbing.item(), setting);
    }

    private String covers(Asking closing) {
        return sentences.need(FailureKind.CLOSE, closing.item(), closing.need().about());
    }
}
