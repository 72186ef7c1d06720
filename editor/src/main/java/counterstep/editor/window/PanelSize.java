package counterstep.editor.window;

import counterstep.editor.remembered.Remembered;
import javax.swing.JSplitPane;

/**
 * How wide or high the user made a panel.
 *
 * @param panel the name under which it is remembered
 * @param split what the user drags
 * @param first whether the panel is the left or upper one
 */
record PanelSize(String panel, LineSplit split, boolean first) {
    PanelSize {
        split.setName(panel);
    }

    void restore(Remembered remembered) {
        remembered
                .extent(panel)
                .ifPresent(extent -> split.setDividerLocation(first ? extent : whole() - extent));
    }

    void remember(Remembered remembered) {
        int location = split.getDividerLocation();
        remembered.extent(panel, first ? location : whole() - location);
    }

    private int whole() {
        return split.getOrientation() == JSplitPane.HORIZONTAL_SPLIT
                ? split.getWidth()
                : split.getHeight();
    }
}
