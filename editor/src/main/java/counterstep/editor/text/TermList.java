package counterstep.editor.text;

import counterstep.editor.form.KeyPress;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.Type;
import counterstep.editor.theme.WideList;
import counterstep.find.Term;
import counterstep.find.Terms;
import counterstep.find.TextPlace;
import counterstep.model.Procedure;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;

/**
 * The names of items and tools with how often the texts use each, and below them things that the
 * texts act on and that are no item; a click goes to the next use, one at the end of a thing's line
 * makes it an item.
 */
final class TermList extends JPanel {
    private static final int WIDTH = 220;

    /** A line; {@code item} where it is the name of one, or of a tool. */
    private record Line(Term term, boolean item) {
        boolean isCalled(String name) {
            return term.name().equalsIgnoreCase(name);
        }

        /** As lists are searched by typing. */
        @Override
        public String toString() {
            return term.name();
        }
    }

    private final Consumer<TextPlace> shown;
    private final Consumer<String> made;
    private final DefaultListModel<Line> model = new DefaultListModel<>();
    private final JList<Line> list = new WideList<>(model);
    private final Row row = new Row();
    private Term last = new Term("", List.of());
    private int use;

    /**
     * An empty list.
     *
     * @param shown gets the place of a use that is to be shown
     * @param made gets the name of a thing that is to be an item
     */
    TermList(Consumer<TextPlace> shown, Consumer<String> made) {
        super(new BorderLayout());
        this.shown = shown;
        this.made = made;
        JLabel head = new JLabel("Terms");
        head.putClientProperty("FlatLaf.styleClass", "panelHead");
        head.setBorder(BorderFactory.createEmptyBorder(10, 12, 6, 12));
        list.setName("terms");
        list.getAccessibleContext().setAccessibleName("Terms");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(row);
        list.addMouseListener(
                new MouseAdapter() {
                    @Override
                    public void mouseClicked(MouseEvent event) {
                        if (event.getX() >= list.getWidth() - row.wordWidth() && isThing()) {
                            make();
                        } else {
                            next();
                        }
                    }
                });
        KeyPress.on(list, "ENTER", this::next);
        KeyPress.on(list, "INSERT", this::make);
        JScrollPane scroll = new JScrollPane(list);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        add(head, BorderLayout.NORTH);
        add(scroll, BorderLayout.CENTER);
        setPreferredSize(new Dimension(WIDTH, 100));
        updateUI();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBackground(Palette.PANEL.color());
        setBorder(BorderFactory.createMatteBorder(0, 1, 0, 0, Palette.LINE.color()));
    }

    /** Shows the terms of a document, and things that it acts on without an item. */
    void show(Procedure procedure, List<String> things) {
        List<Line> lines = new ArrayList<>();
        Terms.of(procedure).forEach(term -> lines.add(new Line(term, true)));
        Terms.called(procedure, things).stream()
                .filter(thing -> lines.stream().noneMatch(line -> line.isCalled(thing.name())))
                .map(thing -> new Line(thing, false))
                .toList()
                .forEach(lines::add);
        if (!lines.equals(Collections.list(model.elements()))) {
            int selected = list.getSelectedIndex();
            model.clear();
            model.addAll(lines);
            list.setSelectedIndex(Math.min(selected, lines.size() - 1));
        }
    }

    private boolean isThing() {
        return list.getSelectedValue() != null && !list.getSelectedValue().item();
    }

    private void make() {
        if (isThing()) {
            made.accept(list.getSelectedValue().term().name());
        }
    }

    /** Goes to the next use of the term that is selected, around the end. */
    private void next() {
        if (list.getSelectedValue() == null || list.getSelectedValue().term().uses().isEmpty()) {
            return;
        }
        Term term = list.getSelectedValue().term();
        use = term.name().equals(last.name()) ? (use + 1) % term.uses().size() : 0;
        last = term;
        shown.accept(term.uses().get(use));
    }

    /** Name left, count right; a name that no text uses is faint, a thing says what can be done. */
    private static final class Row extends JPanel implements ListCellRenderer<Line> {
        private static final String MAKE = "Make it an item";
        private static final int ASIDE = 12;

        private final JLabel name = PlainText.in(new JLabel());
        private final JLabel count = PlainText.in(new JLabel());

        Row() {
            super(new BorderLayout(8, 0));
            setBorder(BorderFactory.createEmptyBorder(3, ASIDE, 3, ASIDE));
            add(name, BorderLayout.CENTER);
            add(count, BorderLayout.LINE_END);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Line> list,
                Line line,
                int index,
                boolean selected,
                boolean focused) {
            int uses = line.term().uses().size();
            name.setText(line.term().name());
            count.setText(line.item() ? Integer.toString(uses) : MAKE);
            name.setFont(Type.BODY.font());
            count.setFont((line.item() ? Type.SMALL : Type.SMALL_STRONG).font());
            name.setForeground((uses == 0 && line.item() ? Palette.SOFT : Palette.INK).color());
            count.setForeground((line.item() ? Palette.SOFT : Palette.ACCENT).color());
            setBackground((selected ? Palette.ACCENT_GROUND : Palette.PANEL).color());
            getAccessibleContext()
                    .setAccessibleName(
                            line.term().name()
                                    + (uses == 1 ? ", used once" : ", used " + uses + " times")
                                    + (line.item() ? "" : ", no item; Insert makes it one"));
            return this;
        }

        /** How much of a line's end the word takes that is clicked. */
        int wordWidth() {
            return getFontMetrics(Type.SMALL_STRONG.font()).stringWidth(MAKE) + ASIDE;
        }
    }
}
