package counterstep.editor.form;

import counterstep.editor.theme.FieldFrame;
import java.awt.KeyboardFocusManager;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ScrollPaneConstants;

/** Several lines of text; Tab leaves it, as in every other field. */
public final class TextBlock implements Input<String> {
    private final String label;
    private final JTextArea area;
    private final JScrollPane scroll;
    private final HandIn handIn;

    /** A block of that many rows, which runs {@code changed} when its text is handed in. */
    public TextBlock(String label, int rows, Runnable changed) {
        this.label = label;
        area = new JTextArea(rows, 10);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        area.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        area.getAccessibleContext().setAccessibleName(label);
        scroll = new JScrollPane(area);
        scroll.setBorder(FieldFrame.border());
        scroll.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        handIn = HandIn.attach(area, changed);
    }

    /** The same under a name that tests find it by. */
    public TextBlock named(String name) {
        area.setName(name);
        return this;
    }

    /** Runs something at each keystroke, before the text is handed in. */
    public TextBlock whileTyping(Runnable typed) {
        area.getDocument().addDocumentListener(new Typing(typed));
        return this;
    }

    @Override
    public String label() {
        return label;
    }

    @Override
    public JComponent component() {
        return scroll;
    }

    @Override
    public void show(String value) {
        handIn.show(area, value);
    }

    @Override
    public String value() {
        return area.getText().strip();
    }
}
