package counterstep.editor.form;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/**
 * Runs something at each change of a text, however it comes.
 *
 * @param changed what is run
 */
public record Typing(Runnable changed) implements DocumentListener {
    @Override
    public void insertUpdate(DocumentEvent event) {
        changed.run();
    }

    @Override
    public void removeUpdate(DocumentEvent event) {
        changed.run();
    }

    @Override
    public void changedUpdate(DocumentEvent event) {
        // attributes of plain text never change
    }
}
