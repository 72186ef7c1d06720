package counterstep.editor.window;

import counterstep.editor.desk.DeskPanel;
import java.awt.Dimension;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;

/**
 * The row of panels below: their tabs, the controls of the one that is chosen at the end of the
 * tabs, and at the right what stands beside it.
 */
final class LowerRow {
    private final List<DeskPanel> panels;
    private final JTabbedPane tabs = new JTabbedPane();
    private final LineSplit split;
    private final int right;

    /**
     * A row.
     *
     * @param panels one a tab
     * @param right how wide what stands beside them is to begin with
     */
    LowerRow(List<DeskPanel> panels, int right) {
        this.panels = panels;
        this.right = right;
        tabs.setOpaque(true);
        tabs.setName("panels below");
        tabs.getAccessibleContext().setAccessibleName("Panels below");
        tabs.setPreferredSize(new Dimension(800, 230));
        tabs.setMinimumSize(new Dimension(200, 150));
        panels.forEach(this::add);
        split = new LineSplit(JSplitPane.HORIZONTAL_SPLIT, tabs, new JPanel(), tabs, true);
        tabs.addChangeListener(event -> chosen());
        chosen();
    }

    private void add(DeskPanel panel) {
        tabs.addTab(panel.title(), panel.component());
        int at = tabs.getTabCount() - 1;
        panel.onCount(
                count ->
                        tabs.setTitleAt(
                                at, count.isEmpty() ? panel.title() : panel.title() + " " + count));
    }

    private void chosen() {
        DeskPanel panel = panels.get(tabs.getSelectedIndex());
        tabs.putClientProperty("JTabbedPane.trailingComponent", panel.tabControls().orElse(null));
        split.showSecond(panel.beside().map(this::wide));
    }

    private JComponent wide(JComponent beside) {
        beside.setPreferredSize(new Dimension(right, 200));
        return beside;
    }

    /** Brings a panel to the front and the keyboard into it. */
    void show(DeskPanel panel) {
        tabs.setSelectedIndex(panels.indexOf(panel));
        panel.component().transferFocus();
    }

    /** The panels, in the order of their tabs. */
    List<DeskPanel> panels() {
        return panels;
    }

    /** What is put into the window. */
    LineSplit component() {
        return split;
    }
}
