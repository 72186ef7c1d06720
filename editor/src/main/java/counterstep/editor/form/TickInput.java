package counterstep.editor.form;

import javax.swing.JCheckBox;
import javax.swing.JComponent;

/** Yes or no; its label stands on it. */
public final class TickInput implements Input<Boolean> {
    private final JCheckBox box;

    /** A tick box of that label, which runs {@code changed} when it is clicked. */
    public TickInput(String label, Runnable changed) {
        box = new JCheckBox(label);
        box.setOpaque(false);
        box.addActionListener(event -> changed.run());
    }

    /** The same under a name that tests find it by. */
    public TickInput named(String name) {
        box.setName(name);
        return this;
    }

    @Override
    public String label() {
        return "";
    }

    @Override
    public JComponent component() {
        return box;
    }

    @Override
    public void show(Boolean value) {
        box.setSelected(value);
    }

    @Override
    public Boolean value() {
        return box.isSelected();
    }
}
