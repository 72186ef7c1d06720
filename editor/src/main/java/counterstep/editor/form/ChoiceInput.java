package counterstep.editor.form;

import counterstep.editor.theme.PlainText;
import java.awt.Component;
import java.util.List;
import java.util.function.Function;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;

/**
 * One of a few choices.
 *
 * @param <T> what is chosen
 */
public final class ChoiceInput<T> implements Input<T> {
    private final String label;
    private final Function<T, String> word;
    private final JComboBox<T> box = new JComboBox<>();
    private List<T> offered = List.of();
    private boolean muted;

    /** A choice under that label, which runs {@code changed} when another is taken. */
    public ChoiceInput(String label, List<T> choices, Function<T, String> word, Runnable changed) {
        this.label = label;
        this.word = word;
        box.setRenderer(new Words());
        offer(choices);
        box.addActionListener(
                event -> {
                    if (!muted) {
                        changed.run();
                    }
                });
        box.getAccessibleContext().setAccessibleName(label);
        box.setMaximumRowCount(16);
    }

    /** The same under a name that tests find it by. */
    public ChoiceInput<T> named(String name) {
        box.setName(name);
        return this;
    }

    /**
     * Offers other choices; the one shown stays if it is among them. The same choices again leave
     * the box alone: another model would close its list while the user is choosing.
     */
    public void offer(List<T> choices) {
        if (choices.equals(offered)) {
            box.repaint(); // the same things may read otherwise now
            return;
        }
        offered = List.copyOf(choices);
        muted = true;
        Object shown = box.getSelectedItem();
        DefaultComboBoxModel<T> model = new DefaultComboBoxModel<>();
        model.addAll(choices);
        box.setModel(model);
        model.setSelectedItem(shown != null && choices.contains(shown) ? shown : first(choices));
        muted = false;
    }

    private static Object first(List<?> choices) {
        return choices.isEmpty() ? null : choices.get(0);
    }

    @Override
    public String label() {
        return label;
    }

    @Override
    public JComponent component() {
        return box;
    }

    @Override
    public void show(T value) {
        muted = true;
        box.setSelectedItem(value);
        muted = false;
    }

    @Override
    public T value() {
        return box.getItemAt(box.getSelectedIndex());
    }

    private final class Words extends DefaultListCellRenderer {
        private Words() {
            PlainText.in(this);
        }

        @Override
        @SuppressWarnings("unchecked") // the list is the box's own
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focused) {
            String text = value == null ? "" : word.apply((T) value);
            return super.getListCellRendererComponent(
                    list, text.isEmpty() ? " " : text, index, selected, focused);
        }
    }
}
