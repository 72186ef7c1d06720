package counterstep.editor.form;

import javax.swing.JComponent;

/**
 * One field of a form: shows a value and, when the user changes it, says so to whoever made it.
 * Showing a value never counts as a change.
 *
 * @param <T> what it holds
 */
public interface Input<T> {
    /** The word beside it. */
    String label();

    /** What stands in the form. */
    JComponent component();

    /** Shows a value. */
    void show(T value);

    /** The value as it stands; the last good one while what is typed has no meaning. */
    T value();
}
