package counterstep.editor.form;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.AbstractListModel;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListSelectionModel;

/**
 * A short list whose selected entry is edited in the fields below it. Every change of an entry, and
 * adding, removing and moving one, is told as one change of the list.
 *
 * @param <T> an entry
 */
public final class ListInput<T> implements Input<List<T>> {
    /**
     * How an entry reads in the list.
     *
     * @param lead the word in front, set off
     * @param mark a drawing behind it, if there is one
     * @param rest what follows
     */
    public record Line(String lead, Optional<Icon> mark, String rest) {}

    private final String label;
    private final EntryForm<T> form;
    private final Runnable changed;
    private final JPanel panel = new JPanel(new BorderLayout(0, 4));
    private final Entries entries = new Entries();
    private final JList<T> list = new JList<>(entries);
    private final JButton remove = new JButton("Remove");
    private final JButton earlier = new JButton("Earlier");
    private final JButton later = new JButton("Later");
    private int shownAt = -1;
    private boolean muted;

    /**
     * An empty list.
     *
     * @param label the heading
     * @param line how an entry reads
     * @param fresh makes a new entry; empty if none can be made yet
     * @param form edits the selected one; it must run {@link #entryChanged} at each change
     * @param changed run at each change of the list
     */
    public ListInput(
            String label,
            Function<T, Line> line,
            Supplier<Optional<T>> fresh,
            EntryForm<T> form,
            Runnable changed) {
        this.label = label;
        this.form = form;
        this.changed = changed;
        panel.setOpaque(false);
        list.setCellRenderer(new LineRenderer<>(line));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.addListSelectionListener(event -> showSelected());
        list.getAccessibleContext().setAccessibleName(label);
        list.setBorder(BorderFactory.createEmptyBorder());
        panel.add(head(fresh), BorderLayout.NORTH);
        panel.add(list, BorderLayout.CENTER);
        panel.add(foot(), BorderLayout.SOUTH);
        showSelected();
    }

    /** The same under a name that tests find its list by; its button to add is {@code name.add}. */
    public ListInput<T> named(String name) {
        list.setName(name);
        return this;
    }

    private JComponent head(Supplier<Optional<T>> fresh) {
        JPanel head = new JPanel(new BorderLayout());
        head.setOpaque(false);
        JLabel name = new JLabel(label);
        name.putClientProperty("FlatLaf.styleClass", "label");
        name.setLabelFor(list);
        JButton add = new JButton("Add");
        add.putClientProperty("FlatLaf.styleClass", "word");
        add.getAccessibleContext().setAccessibleName("Add to " + label);
        add.setName(label + ".add");
        add.addActionListener(event -> fresh.get().ifPresent(this::add));
        head.add(name, BorderLayout.CENTER);
        head.add(add, BorderLayout.LINE_END);
        return head;
    }

    private JComponent foot() {
        JPanel moves = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        moves.setOpaque(false);
        for (JButton button : List.of(earlier, later, remove)) {
            button.putClientProperty("FlatLaf.styleClass", "quiet");
            button.setName(label + "." + button.getText().toLowerCase(java.util.Locale.ROOT));
            moves.add(button);
        }
        remove.addActionListener(event -> remove());
        earlier.addActionListener(event -> move(-1));
        later.addActionListener(event -> move(1));
        JPanel foot = new JPanel(new BorderLayout());
        foot.setOpaque(false);
        foot.add(form.component(), BorderLayout.CENTER);
        foot.add(moves, BorderLayout.SOUTH);
        return foot;
    }

    /** To be run by the form at each change of a field. */
    public void entryChanged() {
        int at = shownAt;
        if (muted || at < 0 || at >= entries.getSize()) {
            return;
        }
        List<T> next = new ArrayList<>(entries.all);
        next.set(at, form.read());
        muted = true;
        int selected = list.getSelectedIndex();
        entries.show(next);
        list.setSelectedIndex(selected);
        muted = false;
        changed.run();
    }

    private void add(T entry) {
        List<T> next = new ArrayList<>(entries.all);
        int at = list.getSelectedIndex() < 0 ? next.size() : list.getSelectedIndex() + 1;
        next.add(at, entry);
        replace(next, at);
    }

    private void remove() {
        int at = list.getSelectedIndex();
        List<T> next = new ArrayList<>(entries.all);
        next.remove(at);
        replace(next, Math.min(at, next.size() - 1));
    }

    private void move(int by) {
        int at = list.getSelectedIndex();
        List<T> next = new ArrayList<>(entries.all);
        Collections.swap(next, at, at + by);
        replace(next, at + by);
    }

    private void replace(List<T> next, int selected) {
        muted = true;
        entries.show(next);
        list.setSelectedIndex(selected);
        if (selected < 0) {
            list.clearSelection();
        }
        muted = false;
        showSelected();
        changed.run();
    }

    private void showSelected() {
        if (muted) {
            return;
        }
        HandIn.focused(); // what is being typed belongs to the entry shown before
        int at = list.getSelectedIndex();
        shownAt = at;
        int size = entries.getSize();
        boolean some = at >= 0 && at < size;
        form.component().setVisible(some);
        for (JButton button : List.of(remove, earlier, later)) {
            button.setVisible(some);
        }
        earlier.setEnabled(at > 0);
        later.setEnabled(at < size - 1);
        if (some) {
            muted = true;
            form.show(entries.all.get(at));
            muted = false;
        }
        panel.revalidate();
        javax.swing.SwingUtilities.invokeLater(() -> reveal(some));
    }

    private void reveal(boolean some) {
        if (some && list.isFocusOwner()) {
            Dimension size = panel.getSize();
            panel.scrollRectToVisible(new Rectangle(0, 0, size.width, size.height));
        }
    }

    @Override
    public String label() {
        return "";
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public void show(List<T> value) {
        if (value.equals(entries.all)) {
            return;
        }
        int at = list.getSelectedIndex();
        muted = true;
        entries.show(value);
        if (at >= 0 && at < value.size()) {
            list.setSelectedIndex(at);
        } else {
            list.clearSelection();
        }
        muted = false;
        showSelected();
    }

    @Override
    public List<T> value() {
        return entries.all;
    }

    private final class Entries extends AbstractListModel<T> {
        private List<T> all = List.of();

        private void show(List<T> next) {
            int before = all.size();
            all = List.of();
            if (before > 0) {
                fireIntervalRemoved(this, 0, before - 1);
            }
            all = List.copyOf(next);
            if (!all.isEmpty()) {
                fireIntervalAdded(this, 0, all.size() - 1);
            }
        }

        @Override
        public int getSize() {
            return all.size();
        }

        @Override
        public T getElementAt(int index) {
            return all.get(index);
        }
    }
}
