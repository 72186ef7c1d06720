package counterstep.editor.window;

import counterstep.editor.remembered.Remembered;
import counterstep.editor.remembered.Side;
import java.awt.Dimension;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalInt;
import javax.swing.JComponent;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;

/** The lines between the middle and the panels around it; a side without panels takes no space. */
final class DockSplits {
    private final Map<Side, PanelRegion> regions;
    private final Map<Side, PanelSize> sizes = new EnumMap<>(Side.class);
    private final LowerRow below;
    private final LineSplit rows;

    DockSplits(Map<Side, PanelRegion> regions, JComponent middle) {
        this.regions = regions;
        below = new LowerRow(regions.get(Side.BELOW));
        JTabbedPane left = narrow(regions.get(Side.LEFT).tabs());
        JTabbedPane right = narrow(regions.get(Side.RIGHT).tabs());
        LineSplit columns = new LineSplit(JSplitPane.HORIZONTAL_SPLIT, left, middle, middle, false);
        LineSplit upper = new LineSplit(JSplitPane.HORIZONTAL_SPLIT, columns, right, columns, true);
        LineSplit.align(upper, below.component());
        rows = new LineSplit(JSplitPane.VERTICAL_SPLIT, upper, below.component(), upper, true);
        sizes.put(
                Side.LEFT,
                new PanelSize("items", columns, true, whole -> Math.min(290, whole * 3 / 10)));
        sizes.put(
                Side.RIGHT,
                new PanelSize("details", upper, false, whole -> Math.min(318, whole / 4)));
        sizes.put(
                Side.BELOW, new PanelSize("lower row", rows, false, whole -> heightAtFirst(whole)));
    }

    /** Low windows give the panels below more than their share: a list needs some rows. */
    private static int heightAtFirst(int whole) {
        return Math.max(250, whole * 3 / 10);
    }

    private static JTabbedPane narrow(JTabbedPane tabs) {
        tabs.setMinimumSize(new Dimension(180, 100));
        return tabs;
    }

    JComponent component() {
        return rows;
    }

    /** Gives each side its space, or none if nothing stands there. */
    void follow() {
        below.follow();
        sizes.forEach((side, size) -> size.show(!regions.get(side).held().isEmpty()));
    }

    /** Height of the panels below, as a share of all; none for what it is at first. */
    void heighten(double share) {
        int height = (int) Math.round(rows.getHeight() * share);
        sizes.get(Side.BELOW).want(height > 0 ? OptionalInt.of(height) : OptionalInt.empty());
    }

    /** Gives all sides the size they have at first. */
    void asAtFirst() {
        sizes.values().forEach(size -> size.want(OptionalInt.empty()));
    }

    void restore(Remembered remembered) {
        sizes.values().forEach(size -> size.restore(remembered));
    }

    void remember(Remembered remembered) {
        sizes.values().forEach(size -> size.remember(remembered));
    }
}
