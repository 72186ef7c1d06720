package counterstep.editor.window;

import counterstep.editor.form.KeyPress;
import java.awt.Component;
import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;

/** A tab, or the head of a panel without one, as a grip: dragged, and asked for a menu. */
final class TabGrip {
    private static final int DRAGGED_FROM = 12;

    private final JFrame frame;
    private final PanelDock dock;
    private final Function<Point, Optional<String>> panelAt;

    /** The press has chosen the tab by now, and the tabs may have moved under the pointer. */
    private final Supplier<Optional<String>> pressed;

    private Optional<Drag> drag = Optional.empty();

    /** A drag that may have begun. */
    private static final class Drag {
        private final String panel;
        private final Point from;
        private Optional<DropMark> mark = Optional.empty();

        Drag(String panel, Point from) {
            this.panel = panel;
            this.from = from;
        }
    }

    /** The tabs of a region. */
    TabGrip(JFrame frame, PanelDock dock, PanelRegion region) {
        this(frame, dock, at -> panelAt(region, at), () -> region.front().map(PanelHolder::name));
        JTabbedPane tabs = region.tabs();
        listen(tabs);
        Runnable menu =
                () ->
                        region.front()
                                .ifPresent(
                                        front -> PanelMenu.show(tabs, 16, 36, front.name(), dock));
        KeyPress.on(tabs, "shift F10", menu);
        KeyPress.on(tabs, "CONTEXT_MENU", menu);
    }

    /** The head of a panel. */
    TabGrip(JFrame frame, PanelDock dock, PanelHolder holder, JComponent head) {
        this(frame, dock, at -> Optional.of(holder.name()), () -> Optional.of(holder.name()));
        listen(head);
    }

    private TabGrip(
            JFrame frame,
            PanelDock dock,
            Function<Point, Optional<String>> panelAt,
            Supplier<Optional<String>> pressed) {
        this.frame = frame;
        this.dock = dock;
        this.panelAt = panelAt;
        this.pressed = pressed;
    }

    private static Optional<String> panelAt(PanelRegion region, Point at) {
        int tab = region.tabs().indexAtLocation(at.x, at.y);
        return tab < 0 ? Optional.empty() : Optional.of(region.held().get(tab).name());
    }

    private void listen(Component grip) {
        MouseAdapter mouse =
                new MouseAdapter() {
                    @Override
                    public void mousePressed(MouseEvent event) {
                        menu(event);
                        drag = Optional.empty();
                        if (SwingUtilities.isLeftMouseButton(event)) {
                            drag = pressed.get().map(p -> begun(p, event));
                        }
                    }

                    @Override
                    public void mouseDragged(MouseEvent event) {
                        drag.ifPresent(each -> drag(each, event.getLocationOnScreen()));
                    }

                    @Override
                    public void mouseReleased(MouseEvent event) {
                        menu(event);
                        drag.ifPresent(each -> drop(each, event.getLocationOnScreen()));
                        drag = Optional.empty();
                    }
                };
        grip.addMouseListener(mouse);
        grip.addMouseMotionListener(mouse);
    }

    private static Drag begun(String panel, MouseEvent event) {
        return new Drag(panel, event.getLocationOnScreen());
    }

    private void menu(MouseEvent event) {
        if (event.isPopupTrigger()) {
            panelAt.apply(event.getPoint())
                    .ifPresent(
                            panel ->
                                    PanelMenu.show(
                                            event.getComponent(),
                                            event.getX(),
                                            event.getY(),
                                            panel,
                                            dock));
        }
    }

    private void drag(Drag each, Point now) {
        if (each.mark.isEmpty() && each.from.distance(now) >= DRAGGED_FROM) {
            each.mark = Optional.of(new DropMark(frame));
            frame.setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
        }
        each.mark.ifPresent(mark -> mark.show(Drop.at(dock, each.panel, now)));
    }

    private void drop(Drag each, Point now) {
        if (each.mark.isPresent()) {
            each.mark.get().remove();
            frame.setCursor(Cursor.getDefaultCursor());
            Optional<Drop> drop = Drop.at(dock, each.panel, now);
            if (drop.isPresent()) {
                dock.move(each.panel, drop.get().side(), drop.get().before());
            } else {
                dock.takeOut(each.panel, Optional.of(now));
            }
        }
    }
}
