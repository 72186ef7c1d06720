package counterstep.editor.window;

import java.awt.Dimension;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JSplitPane;

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
                        front.flatMap(holder -> holder.panel().tabControls()).orElse(null));
        split.showSecond(front.flatMap(PanelHolder::beside));
    }

    /** What is put into the window. */
    LineSplit component() {
        return split;
    }
}
