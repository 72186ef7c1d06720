package counterstep.editor.findings;

import counterstep.check.Finding;
import counterstep.editor.analysis.Analysis;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.Selection;
import counterstep.editor.theme.WideList;
import counterstep.model.StepId;
import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;

/** The list of findings: choosing one selects its place. */
public final class FindingsPanel implements DeskPanel {
    private static final String LIST = "list";
    private static final String NONE = "none";

    private final Desk desk;
    private final CardLayout cards = new CardLayout();
    private final JPanel panel = new JPanel(cards);
    private final DefaultListModel<Finding> findings = new DefaultListModel<>();
    private final JList<Finding> list = new WideList<>(findings);
    private final FindingRenderer renderer = new FindingRenderer();
    private final JLabel none = new JLabel();
    private final List<Consumer<String>> counted = new ArrayList<>();
    private String count = "";
    private boolean muted;

    /** The findings of what lies on a desk. */
    public FindingsPanel(Desk desk) {
        this.desk = desk;
        list.setName("findings");
        list.setCellRenderer(renderer);
        list.setFixedCellHeight(30);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName("Findings");
        list.addListSelectionListener(event -> chosen(event.getValueIsAdjusting()));
        JScrollPane scroll = new JScrollPane(list);
        scroll.setBorder(BorderFactory.createEmptyBorder(4, 0, 4, 0));
        panel.add(scroll, LIST);
        panel.add(empty(), NONE);
        none.setName("nothing found");
        none.setText("The checks are at work.");
        cards.show(panel, NONE);
        desk.onAnalysis(this::render);
    }

    private JComponent empty() {
        none.putClientProperty("FlatLaf.styleClass", "soft");
        none.setVerticalAlignment(JLabel.TOP);
        JPanel page = new JPanel(new BorderLayout());
        page.setBorder(BorderFactory.createEmptyBorder(12, 16, 12, 16));
        page.add(none);
        return page;
    }

    @Override
    public String title() {
        return "Findings";
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public void onCount(Consumer<String> listener) {
        counted.add(listener);
        listener.accept(count);
    }

    private void chosen(boolean adjusting) {
        Finding finding = list.getSelectedValue();
        if (muted || adjusting || finding == null) {
            return;
        }
        if (!finding.steps().isEmpty()) {
            desk.select(Selection.of(finding.steps().get(0)));
        } else if (!finding.items().isEmpty()) {
            desk.select(new Selection(Set.of(), new LinkedHashSet<>(finding.items()), Set.of()));
        }
    }

    private void render(Analysis analysis) {
        if (analysis.renewing()) {
            tell(count.isEmpty() || count.endsWith("…") ? count : count + " …");
            return;
        }
        renderer.number(analysis.index());
        show(analysis.review().findings());
        none.setText(
                analysis.procedure().steps().isEmpty()
                        ? "What is missing or unsafe will be listed here as you draw."
                        : "Nothing found: every removal has its reinstall in page order.");
        tell(Integer.toString(analysis.review().findings().size()));
    }

    private void show(List<Finding> next) {
        cards.show(panel, next.isEmpty() ? NONE : LIST);
        if (next.equals(Collections.list(findings.elements()))) {
            list.repaint();
            return;
        }
        List<StepId> place =
                list.getSelectedValue() == null ? List.of() : list.getSelectedValue().steps();
        String check = list.getSelectedValue() == null ? "" : list.getSelectedValue().check();
        muted = true;
        findings.clear();
        findings.addAll(next);
        next.stream()
                .filter(kept -> kept.check().equals(check) && kept.steps().equals(place))
                .findFirst()
                .ifPresent(kept -> list.setSelectedValue(kept, true));
        muted = false;
    }

    private void tell(String next) {
        count = next;
        counted.forEach(listener -> listener.accept(next));
    }
}
