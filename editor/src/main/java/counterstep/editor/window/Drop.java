package counterstep.editor.window;

import counterstep.editor.remembered.Side;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JTabbedPane;

/**
 * Where a panel that is dragged goes when it is let go.
 *
 * @param side the side
 * @param before how many of those there stand before it
 * @param ground what it will take up, on the screen
 */
record Drop(Side side, int before, Rectangle ground) {
    /** A share of the window, at each edge without panels, that takes a panel. */
    private static final double EDGE = 0.15;

    /** At a point of the screen; empty where a panel gets a window of its own. */
    static Optional<Drop> at(PanelDock dock, String panel, Point point) {
        for (Side side : Side.values()) {
            JTabbedPane tabs = dock.region(side).tabs();
            if (tabs.isShowing() && onScreen(tabs).contains(point)) {
                return Optional.of(new Drop(side, place(dock, panel, side, point), onScreen(tabs)));
            }
        }
        Rectangle all = onScreen(dock.component());
        for (Side side : Side.values()) {
            if (dock.region(side).held().isEmpty() && edge(all, side).contains(point)) {
                return Optional.of(new Drop(side, 0, edge(all, side)));
            }
        }
        return Optional.empty();
    }

    private static int place(PanelDock dock, String panel, Side side, Point point) {
        JTabbedPane tabs = dock.region(side).tabs();
        Rectangle here = onScreen(tabs);
        int tab = tabs.indexAtLocation(point.x - here.x, point.y - here.y);
        int own = dock.arrangement().at(side).indexOf(panel);
        if (tab < 0) {
            return own < 0 ? Integer.MAX_VALUE : own;
        }
        return tab;
    }

    private static Rectangle edge(Rectangle all, Side side) {
        int across = (int) (all.width * EDGE);
        int down = (int) (all.height * EDGE);
        return switch (side) {
            case LEFT -> new Rectangle(all.x, all.y, across, all.height);
            case RIGHT -> new Rectangle(all.x + all.width - across, all.y, across, all.height);
            case BELOW -> new Rectangle(all.x, all.y + all.height - down, all.width, down);
        };
    }

    private static Rectangle onScreen(JComponent component) {
        return new Rectangle(component.getLocationOnScreen(), component.getSize());
    }
}
