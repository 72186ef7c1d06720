package counterstep.editor.details;

import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.theme.Theme;
import counterstep.model.Procedure;
import java.util.function.Function;
import javax.swing.JFrame;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;

/** One panel on a desk in a window of its own, used with real mouse and keys. */
public final class PanelWindow implements AutoCloseable {
    private final Robot robot = BasicRobot.robotWithNewAwtHierarchy();
    private final Desk desk;
    private final FrameFixture frame;

    private record Opened(Desk desk, JFrame frame) {}

    /** Opens a window of that size. */
    public PanelWindow(Procedure procedure, Function<Desk, DeskPanel> panel) {
        try {
            Opened opened = GuiActionRunner.execute(() -> open(procedure, panel));
            desk = opened.desk();
            frame = new FrameFixture(robot, opened.frame());
            frame.show();
        } catch (RuntimeException failed) {
            robot.cleanUp(); // else the next test would wait for the screen for ever
            throw failed;
        }
    }

    private static Opened open(Procedure procedure, Function<Desk, DeskPanel> panel) {
        Theme.LIGHT.show();
        Desk desk = Desk.of(procedure);
        JFrame frame = new JFrame("test");
        frame.add(panel.apply(desk).component());
        frame.setPreferredSize(new java.awt.Dimension(360, 900));
        return new Opened(desk, frame);
    }

    /** The window. */
    public FrameFixture frame() {
        return frame;
    }

    /** Does something with the desk on the event thread. */
    public void onDesk(java.util.function.Consumer<Desk> act) {
        GuiActionRunner.execute(() -> act.accept(desk));
    }

    /** The document as it lies on the desk, all events done. */
    public Procedure procedure() {
        robot.waitForIdle();
        return GuiActionRunner.execute(() -> desk.state().procedure());
    }

    @Override
    public void close() {
        robot.cleanUp();
    }
}
