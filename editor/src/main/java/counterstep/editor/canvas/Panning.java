package counterstep.editor.canvas;

import counterstep.editor.form.KeyPress;
import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;

/** Moves the view: wheel, ctrl and wheel, middle button, space and drag. */
final class Panning extends MouseAdapter {
    private static final double STEP = 48;
    private static final double ZOOM = 1.1;

    private final JComponent control;
    private final Viewpoint viewpoint;
    private boolean space;
    private Optional<Point> last = Optional.empty();

    Panning(GraphPane pane, Viewpoint viewpoint) {
        this.control = pane.getGraphControl();
        this.viewpoint = viewpoint;
    }

    void install() {
        control.addMouseListener(this);
        control.addMouseMotionListener(this);
        control.addMouseWheelListener(this);
        onKey("SPACE", true);
        onKey("released SPACE", false);
    }

    /** Whether a drag would move the view. */
    boolean ready() {
        return space || last.isPresent();
    }

    /** Whether a press begins to move the view and means nothing else. */
    boolean takes(MouseEvent event) {
        return SwingUtilities.isMiddleMouseButton(event)
                || space && SwingUtilities.isLeftMouseButton(event);
    }

    @Override
    public void mousePressed(MouseEvent event) {
        if (takes(event)) {
            last = Optional.of(event.getLocationOnScreen());
        }
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        last.ifPresent(
                before -> {
                    Point now = event.getLocationOnScreen();
                    viewpoint.panBy(before.x - now.x, before.y - now.y);
                    last = Optional.of(now);
                });
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        last = Optional.empty();
    }

    @Override
    public void mouseWheelMoved(MouseWheelEvent event) {
        double turns = event.getPreciseWheelRotation();
        if (event.isControlDown()) {
            Point inView =
                    SwingUtilities.convertPoint(control, event.getPoint(), control.getParent());
            viewpoint.zoomAt(inView, Math.pow(ZOOM, -turns));
        } else if (event.isShiftDown()) {
            viewpoint.panBy(turns * STEP, 0);
        } else {
            viewpoint.panBy(0, turns * STEP);
        }
    }

    private void onKey(String key, boolean held) {
        KeyPress.on(control, key, () -> hold(held));
    }

    private void hold(boolean held) {
        space = held;
        control.setCursor(
                Cursor.getPredefinedCursor(held ? Cursor.MOVE_CURSOR : Cursor.DEFAULT_CURSOR));
    }
}
