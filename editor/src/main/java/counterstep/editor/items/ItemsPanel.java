package counterstep.editor.items;

import counterstep.check.Finding;
import counterstep.edit.AddItem;
import counterstep.edit.DeleteItem;
import counterstep.editor.analysis.Analysis;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.DeskState;
import counterstep.editor.desk.Selection;
import counterstep.editor.desk.WhileShown;
import counterstep.editor.form.KeyPress;
import counterstep.editor.theme.ItemIcon;
import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.WideList;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.KindWord;
import counterstep.model.Severity;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JMenuItem;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;

/** The register of items, each with the steps that take it off and put it back. */
public final class ItemsPanel implements DeskPanel {
    private static final String LIST = "list";
    private static final String EMPTY = "empty";

    private final Desk desk;
    private final JLabel title = new JLabel(title());
    private final JPanel panel = new JPanel(new BorderLayout());
    private final CardLayout cards = new CardLayout();
    private final JPanel body = new JPanel(cards);
    private final DefaultListModel<ItemRow> rows = new DefaultListModel<>();
    private final JList<ItemRow> list = new WideList<>(rows);
    private boolean muted;

    /** A register on a desk. */
    public ItemsPanel(Desk desk) {
        this.desk = desk;
        panel.add(head(), BorderLayout.NORTH);
        panel.add(body, BorderLayout.CENTER);
        body.add(list(), LIST);
        body.add(empty(), EMPTY);
        cards.show(body, EMPTY);
        WhileShown whileShown = new WhileShown(panel, this::render);
        desk.onState(state -> whileShown.changed());
        desk.onAnalysis(analysis -> whileShown.changed());
    }

    private JComponent head() {
        JPanel head = new JPanel(new BorderLayout());
        head.setBorder(BorderFactory.createEmptyBorder(8, 16, 4, 8));
        title.putClientProperty("FlatLaf.styleClass", "panelHead");
        JButton add = new JButton("Add");
        add.putClientProperty("FlatLaf.styleClass", "word");
        add.setName("items.add");
        add.getAccessibleContext().setAccessibleName("Add an item");
        add.addActionListener(event -> kinds().show(add, 0, add.getHeight()));
        JLabel columns = new JLabel("off / back");
        columns.putClientProperty("FlatLaf.styleClass", "faint");
        columns.setBorder(BorderFactory.createEmptyBorder(0, 0, 0, 4));
        JPanel right = new JPanel(new BorderLayout(8, 0));
        right.add(add, BorderLayout.LINE_START);
        right.add(columns, BorderLayout.LINE_END);
        head.add(title, BorderLayout.LINE_START);
        head.add(right, BorderLayout.LINE_END);
        return head;
    }

    private JPopupMenu kinds() {
        JPopupMenu menu = new JPopupMenu();
        NewItems.samples()
                .forEach(
                        sample -> {
                            JMenuItem entry =
                                    new JMenuItem(
                                            sample.match(KindWord.INSTANCE), new ItemIcon(sample));
                            entry.setName(entry.getText());
                            entry.addActionListener(event -> add(sample));
                            menu.add(entry);
                        });
        return menu;
    }

    private JComponent list() {
        list.setName("items");
        list.getAccessibleContext().setAccessibleName("Items");
        list.setCellRenderer(new ItemRowRenderer());
        list.setFixedCellHeight(26);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.addListSelectionListener(event -> chosen(event.getValueIsAdjusting()));
        KeyPress.on(list, "DELETE", this::delete);
        ItemDrag.from(list);
        JScrollPane scroll = new JScrollPane(list);
        scroll.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        return scroll;
    }

    private static JComponent empty() {
        JLabel words =
                new JLabel(
                        "<html>No items yet.<br>Add what comes off: parts, screws, connectors."
                                + "</html>");
        words.putClientProperty("FlatLaf.styleClass", "soft");
        words.setVerticalAlignment(JLabel.TOP);
        words.setBorder(BorderFactory.createEmptyBorder(8, 16, 16, 16));
        return words;
    }

    @Override
    public String title() {
        return "Items";
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public Optional<JComponent> ownHead() {
        return Optional.of(title);
    }

    private void chosen(boolean adjusting) {
        ItemRow row = list.getSelectedValue();
        if (!muted && !adjusting && row != null) {
            desk.select(Selection.of(row.item().id()));
        }
    }

    private void add(Item sample) {
        Item item = NewItems.like(sample, desk.state().procedure());
        if (desk.apply(new AddItem(item)).isEmpty()) {
            desk.select(Selection.of(item.id()));
        }
    }

    private void delete() {
        ItemRow row = list.getSelectedValue();
        if (row == null) {
            return;
        }
        long uses = uses(row.item().id());
        if (uses == 0 || confirmed(row.item(), uses)) {
            desk.apply(new DeleteItem(row.item().id()));
        }
    }

    private long uses(ItemId item) {
        return desk.state().procedure().steps().stream()
                .flatMap(step -> step.actions().stream())
                .filter(action -> action.item().filter(item::equals).isPresent())
                .count();
    }

    private boolean confirmed(Item item, long uses) {
        String actions = uses == 1 ? "its action goes" : "its " + uses + " actions go";
        JLabel question = PlainText.in(new JLabel());
        question.setText(
                "Delete '" + item.name() + "'? Then " + actions + " too. Undo brings all back.");
        Object[] answers = {"Delete", "Keep"};
        return JOptionPane.showOptionDialog(
                        panel,
                        question,
                        "Delete item",
                        JOptionPane.DEFAULT_OPTION,
                        JOptionPane.QUESTION_MESSAGE,
                        null,
                        answers,
                        answers[1])
                == 0;
    }

    private void render() {
        DeskState state = desk.state();
        Optional<Analysis> newest =
                desk.analysis()
                        .filter(analysis -> !analysis.renewing())
                        .filter(analysis -> analysis.generation() == state.generation());
        show(
                newest.map(ItemsPanel::rows)
                        .orElseGet(
                                () ->
                                        ItemRows.kept(
                                                state.procedure(),
                                                Collections.list(rows.elements()))));
        select(state.selection());
    }

    private static List<ItemRow> rows(Analysis analysis) {
        return ItemRows.of(analysis.procedure(), analysis.ledger(), faulty(analysis));
    }

    private static Set<ItemId> faulty(Analysis analysis) {
        return analysis.review().findings().stream()
                .filter(Finding::open)
                .filter(finding -> finding.severity() == Severity.ERROR)
                .flatMap(finding -> finding.items().stream())
                .collect(Collectors.toSet());
    }

    private void show(List<ItemRow> next) {
        if (next.equals(Collections.list(rows.elements()))) {
            return;
        }
        muted = true;
        rows.clear();
        rows.addAll(next);
        muted = false;
        cards.show(body, next.isEmpty() ? EMPTY : LIST);
    }

    private void select(Selection selection) {
        muted = true;
        list.clearSelection();
        for (int line = 0; line < rows.size(); line++) {
            if (selection.items().contains(rows.get(line).item().id())) {
                list.setSelectedIndex(line);
                list.ensureIndexIsVisible(line);
            }
        }
        muted = false;
    }
}
