package counterstep.editor.testing;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.datatransfer.Transferable;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.TransferHandler;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;

/**
 * Another window beside the one under test, as the desktop's file window: things come out of it.
 */
public final class OtherWindow implements AutoCloseable {
    private final Robot robot;
    private final JLabel label = new JLabel("a thing");
    private final JFrame frame = new JFrame("another window");

    private OtherWindow(Robot robot, Transferable carried) {
        this.robot = robot;
        label.setPreferredSize(new Dimension(160, 60));
        label.setTransferHandler(new Source(carried));
        label.addMouseMotionListener(
                new MouseAdapter() {
                    @Override
                    public void mouseDragged(MouseEvent event) {
                        label.getTransferHandler().exportAsDrag(label, event, TransferHandler.COPY);
                    }
                });
        frame.add(label);
        frame.pack();
        frame.setLocation(1100, 600);
        frame.setAlwaysOnTop(true);
        frame.setVisible(true);
    }

    /** A window with one thing in it. */
    public static OtherWindow with(Robot robot, Transferable carried) {
        return GuiActionRunner.execute(() -> new OtherWindow(robot, carried));
    }

    /** Drags the thing onto a component and lets it go there. */
    public void drop(Component target, Point to) {
        Pause.pause(
                new Condition("the other window is seen") {
                    @Override
                    public boolean test() {
                        return GuiActionRunner.execute(() -> frame.isActive());
                    }
                });
        drag(robot, label, new Point(80, 30), target, to);
    }

    /** Drags with the mouse from a place of one component to a place of another. */
    public static void drag(Robot robot, Component from, Point at, Component target, Point to) {
        robot.moveMouse(from, at);
        robot.pressMouse(from, at, MouseButton.LEFT_BUTTON);
        robot.moveMouse(from, new Point(at.x + 10, at.y + 6));
        robot.moveMouse(from, new Point(at.x + 30, at.y + 6));
        robot.moveMouse(target, to);
        robot.moveMouse(target, new Point(to.x + 2, to.y + 2));
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
    }

    @Override
    public void close() {
        GuiActionRunner.execute(frame::dispose);
    }

    private static final class Source extends TransferHandler {
        private final transient Transferable carried;

        private Source(Transferable carried) {
            this.carried = carried;
        }

        @Override
        public int getSourceActions(JComponent component) {
            return COPY;
        }

        @Override
        protected Transferable createTransferable(JComponent component) {
            return carried;
        }
    }
}
