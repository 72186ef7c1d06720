package counterstep.editor.desk;

import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;

/**
 * A panel of the window: renders the desk's state, turns what the user does into an edit or a
 * selection, and knows no other panel.
 */
public interface DeskPanel {
    /** The name in its tab and in the Window menu, 'Findings'. */
    String title();

    /** What is shown; the same one each time. */
    JComponent component();

    /** The title that it shows itself, hidden where a tab says it; empty if it leaves it to one. */
    default Optional<JComponent> ownHead() {
        return Optional.empty();
    }

    /**
     * Tells a listener, now and later, what stands beside the title in a tab, '4'; may be empty.
     */
    default void onCount(Consumer<String> listener) {
        listener.accept("");
    }

    /** A few small controls that stand beside its tab while it is chosen. */
    default Optional<JComponent> tabControls() {
        return Optional.empty();
    }

    /** What stands at its right, below the details, while its tab is chosen. */
    default Optional<JComponent> beside() {
        return Optional.empty();
    }

    /** Makes an edit of what is typed but not yet handed in: asked before saving and exporting. */
    default void handIn() {}
}
