package counterstep.editor.theme;

import javax.swing.JList;
import javax.swing.ListModel;

/**
 * A list whose lines are as wide as what shows it, never wider: long names are shortened instead of
 * pushing what stands at their right out of sight.
 *
 * @param <E> what it lists
 */
public final class WideList<E> extends JList<E> {
    /** A list of that model. */
    public WideList(ListModel<E> model) {
        super(model);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }
}
