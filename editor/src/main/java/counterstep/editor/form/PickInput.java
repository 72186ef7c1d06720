package counterstep.editor.form;

import counterstep.editor.theme.PlainText;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JComponent;
import javax.swing.JPopupMenu;
import javax.swing.SwingConstants;

/**
 * Any number of a few choices: a button that names those taken and opens a list to tick.
 *
 * @param <T> what is chosen
 */
public final class PickInput<T> implements Input<List<T>> {
    private final String label;
    private final Function<T, String> word;
    private final Runnable changed;
    private final JButton button = PlainText.in(new JButton());
    private List<T> choices = List.of();
    private List<T> taken = List.of();

    /** Nothing offered and nothing taken yet; runs {@code changed} at each tick. */
    public PickInput(String label, Function<T, String> word, Runnable changed) {
        this.label = label;
        this.word = word;
        this.changed = changed;
        button.setHorizontalAlignment(SwingConstants.LEADING);
        button.addActionListener(event -> open());
        describe();
    }

    /** The same under a name that tests find it by. */
    public PickInput<T> named(String name) {
        button.setName(name);
        return this;
    }

    /** Offers these choices. */
    public void offer(List<T> offered) {
        choices = List.copyOf(offered);
        describe();
    }

    private void open() {
        JPopupMenu menu = new JPopupMenu();
        for (T choice : choices) {
            JCheckBoxMenuItem tick = PlainText.in(new JCheckBoxMenuItem());
            tick.setText(word.apply(choice));
            tick.setSelected(taken.contains(choice));
            tick.putClientProperty("CheckBoxMenuItem.doNotCloseOnMouseClick", true);
            tick.addActionListener(event -> take(choice, tick.isSelected()));
            menu.add(tick);
        }
        if (choices.isEmpty()) {
            menu.add("nothing to choose from yet").setEnabled(false);
        }
        menu.show(button, 0, button.getHeight());
    }

    private void take(T choice, boolean wanted) {
        List<T> next = new ArrayList<>(taken);
        next.remove(choice);
        if (wanted) {
            next.add(choice);
        }
        taken = List.copyOf(next);
        describe();
        changed.run();
    }

    private void describe() {
        String names = taken.stream().map(word).collect(Collectors.joining(", "));
        button.setText(names.isEmpty() ? "none" : names);
        button.setToolTipText(names.isEmpty() ? null : label + ": " + names);
        button.getAccessibleContext().setAccessibleName(label + ": " + button.getText());
    }

    @Override
    public String label() {
        return label;
    }

    @Override
    public JComponent component() {
        return button;
    }

    @Override
    public void show(List<T> value) {
        taken = List.copyOf(value);
        describe();
    }

    @Override
    public List<T> value() {
        return taken;
    }
}
