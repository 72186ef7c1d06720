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

/** The names of items and tools with how often the texts use each; a click goes to the next use. */
final class TermList extends JPanel {
    private static final int WIDTH = 220;

    private final Consumer<TextPlace> shown;
    private final DefaultListModel<Term> model = new DefaultListModel<>();
    private final JList<Term> list = new WideList<>(model);
    private Term last = new Term("", List.of());
    private int use;

    /** A list that tells the place of a use that is to be shown. */
    TermList(Consumer<TextPlace> shown) {
        super(new BorderLayout());
        this.shown = shown;
        JLabel head = new JLabel("Terms");
        head.putClientProperty("FlatLaf.styleClass", "panelHead");
        head.setBorder(BorderFactory.createEmptyBorder(10, 12, 6, 12));
        list.setName("terms");
        list.getAccessibleContext().setAccessibleName("Terms");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Row());
        list.addMouseListener(
                new MouseAdapter() {
                    @Override
                    public void mouseClicked(MouseEvent event) {
                        next();
                    }
                });
        KeyPress.on(list, "ENTER", this::next);
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

    /** Shows the terms of a document. */
    void show(Procedure procedure) {
        List<Term> terms = Terms.of(procedure);
        if (!terms.equals(Collections.list(model.elements()))) {
            int selected = list.getSelectedIndex();
            model.clear();
            model.addAll(terms);
            list.setSelectedIndex(Math.min(selected, terms.size() - 1));
        }
    }

    /** Goes to the next use of the term that is selected, around the end. */
    private void next() {
        Term term = list.getSelectedValue();
        if (term == null || term.uses().isEmpty()) {
            return;
        }
        use = term.name().equals(last.name()) ? (use + 1) % term.uses().size() : 0;
        last = term;
        shown.accept(term.uses().get(use));
    }

    /** Name left, count right; a name that no text uses is faint. */
    private static final class Row extends JPanel implements ListCellRenderer<Term> {
        private final JLabel name = PlainText.in(new JLabel());
        private final JLabel count = PlainText.in(new JLabel());

        Row() {
            super(new BorderLayout(8, 0));
            setBorder(BorderFactory.createEmptyBorder(3, 12, 3, 12));
            add(name, BorderLayout.CENTER);
            add(count, BorderLayout.LINE_END);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Term> list,
                Term term,
                int index,
                boolean selected,
                boolean focused) {
            int uses = term.uses().size();
            name.setText(term.name());
            count.setText(Integer.toString(uses));
            name.setFont(Type.BODY.font());
            count.setFont(Type.SMALL.font());
            name.setForeground((uses == 0 ? Palette.SOFT : Palette.INK).color());
            count.setForeground(Palette.SOFT.color());
            setBackground((selected ? Palette.ACCENT_GROUND : Palette.PANEL).color());
            getAccessibleContext()
                    .setAccessibleName(
                            term.name()
                                    + (uses == 1 ? ", used once" : ", used " + uses + " times"));
            return this;
        }
    }
}
