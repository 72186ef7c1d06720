package counterstep.editor.canvas;

import counterstep.model.Phase;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;

/** Which phases are folded: how the drawing is looked at, no part of the document. */
final class Folds {
    private final Set<Phase> folded = EnumSet.noneOf(Phase.class);
    private final Runnable beforeFolding;
    private final Runnable changed;
    private boolean held;

    /**
     * @param beforeFolding what is being typed on a step is handed in before the step goes
     * @param changed draws anew
     */
    Folds(Runnable beforeFolding, Runnable changed) {
        this.beforeFolding = beforeFolding;
        this.changed = changed;
    }

    /** The phases that are folded, whether they have steps or not. */
    Set<Phase> phases() {
        return Set.copyOf(folded);
    }

    boolean isFolded(Phase phase) {
        return folded.contains(phase);
    }

    void fold(Collection<Phase> phases) {
        if (!folded.containsAll(phases)) {
            beforeFolding.run();
            folded.addAll(phases);
            changed.run();
        }
    }

    void unfold(Collection<Phase> phases) {
        if (folded.removeAll(phases)) {
            changed.run();
        }
    }

    void toggle(Phase phase) {
        if (isFolded(phase)) {
            unfold(Set.of(phase));
        } else {
            fold(Set.of(phase));
        }
    }

    /** Unfolds all, without drawing: another document is about to be drawn. */
    void forget() {
        folded.clear();
    }

    /** Selects a folded phase as a whole, so that it stays folded. */
    void hold(Runnable select) {
        held = true;
        select.run();
        held = false;
    }

    /** Whether what is selected now is selected as a whole. */
    boolean isHeld() {
        return held;
    }
}
