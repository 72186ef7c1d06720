package counterstep.editor.window;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;

/**
 * The row of panels below: their tabs, the controls of the one that is chosen at the end of the
 * tabs, and at the right what stands beside it.
 */
final class LowerRow {
    private final PanelRegion region;
    private final LineSplit split;

    LowerRow(PanelRegion region) {
        this.region = region;
        region.tabs().setMinimumSize(new Dimension(200, 150));
        split =
                new LineSplit(
                        JSplitPane.HORIZONTAL_SPLIT,
                        region.tabs(),
                        new JPanel(),
                        region.tabs(),
                        true);
        split.showSecond(Optional.empty());
    }

    /** Shows what belongs to the panel that is in front. */
    void follow() {
        Optional<PanelHolder> front = region.front();
        front.ifPresent(PanelHolder::dress);
        region.tabs()
                .putClientProperty(
                        "JTabbedPane.trailingComponent",
                        front.flatMap(holder -> holder.panel().tabControls())
                                .map(controls -> new GivingWay(region.tabs(), controls))
                                .orElse(null)); // Swing's word for none
        split.showSecond(front.flatMap(PanelHolder::beside));
    }

    /** What is put into the window. */
    LineSplit component() {
        return split;
    }

    /** Controls at the end of the tabs: their words are cut before a tab would have to be. */
    private static final class GivingWay extends JPanel {
        private static final int AROUND_TITLE = 36;

        private final JTabbedPane tabs;

        GivingWay(JTabbedPane tabs, JComponent controls) {
            super(new BorderLayout());
            this.tabs = tabs;
            setOpaque(false);
            add(controls, BorderLayout.CENTER);
        }

        @Override
        public Dimension getPreferredSize() {
            Dimension wanted = super.getPreferredSize();
            int taken = 0;
            for (int tab = 0; tab < tabs.getTabCount(); tab++) { // asking for bounds would lay out
                String title = tabs.getTitleAt(tab);
                taken += AROUND_TITLE + tabs.getFontMetrics(tabs.getFont()).stringWidth(title);
            }
            int room = tabs.getWidth() > 0 ? Math.max(0, tabs.getWidth() - taken) : wanted.width;
            return new Dimension(Math.min(wanted.width, room), wanted.height);
        }
    }
}
