package counterstep.editor.form;

import javax.swing.JComponent;

/**
 * The fields of one entry of a list.
 *
 * @param <T> the entry
 */
public interface EntryForm<T> {
    /** The fields. */
    JComponent component();

    /** Shows an entry. */
    void show(T entry);

    /**
     * The entry as the fields say, the rest as last shown.
     *
     * @throws IllegalArgumentException if the fields have no meaning together
     */
    T read();
}
