package counterstep.editor.form;

import javax.swing.JComponent;
import javax.swing.JTextField;

/** A single line of text. */
public final class TextInput implements Input<String> {
    private final String label;
    private final JTextField field = new JTextField();
    private final HandIn handIn;

    /** A line under that label, which runs {@code changed} when its text is handed in. */
    public TextInput(String label, Runnable changed) {
        this.label = label;
        this.handIn = HandIn.attach(field, changed);
        field.getAccessibleContext().setAccessibleName(label);
    }

    /** The same with a grey hint while it is empty. */
    public TextInput hint(String hint) {
        field.putClientProperty("JTextField.placeholderText", hint);
        return this;
    }

    /** The same under a name that tests and assistive programs find it by. */
    public TextInput named(String name) {
        field.setName(name);
        return this;
    }

    /** Runs something at each keystroke, before the text is handed in. */
    public TextInput whileTyping(Runnable typed) {
        field.getDocument().addDocumentListener(new Typing(typed));
        return this;
    }

    @Override
    public String label() {
        return label;
    }

    @Override
    public JComponent component() {
        return field;
    }

    @Override
    public void show(String value) {
        handIn.show(field, value);
    }

    @Override
    public String value() {
        return field.getText().strip();
    }
}
