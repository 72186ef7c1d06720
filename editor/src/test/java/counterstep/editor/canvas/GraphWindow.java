package counterstep.editor.canvas;

import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskState;
import counterstep.editor.theme.Theme;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.LongSupplier;
import java.util.stream.Collectors;
import javax.swing.JFrame;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;

/** A step graph in a window of its own, used with real mouse and keys. */
final class GraphWindow implements AutoCloseable {
    private final Robot robot = BasicRobot.robotWithNewAwtHierarchy();
    private final Opened opened;

    private record Opened(Desk desk, StepGraph graph, JFrame frame) {}

    GraphWindow(Procedure procedure) {
        this(procedure, System::nanoTime);
    }

    /**
     * @param clock the time in nanoseconds by which steps glide
     */
    GraphWindow(Procedure procedure, LongSupplier clock) {
        opened = GuiActionRunner.execute(() -> open(procedure, clock));
        new FrameFixture(robot, opened.frame()).show();
        settle();
    }

    private static Opened open(Procedure procedure, LongSupplier clock) {
        Theme.LIGHT.show();
        Desk desk = Desk.of(procedure);
        StepGraph graph = new StepGraph(desk, clock);
        JFrame frame = new JFrame("test");
        frame.add(graph);
        frame.setPreferredSize(new Dimension(1000, 700));
        return new Opened(desk, graph, frame);
    }

    Robot robot() {
        return robot;
    }

    Component surface() {
        return robot.finder().findByName(opened.frame(), "step graph");
    }

    DeskState state() {
        settle();
        return GuiActionRunner.execute(() -> opened.desk().state());
    }

    Procedure procedure() {
        return state().procedure();
    }

    /** On the event thread: what lies on the desk, examined or not. */
    Procedure procedureNow() {
        return opened.desk().state().procedure();
    }

    void onDesk(Consumer<Desk> act) {
        GuiActionRunner.execute(() -> act.accept(opened.desk()));
        settle();
    }

    void onGraph(Consumer<StepGraph> act) {
        GuiActionRunner.execute(() -> act.accept(opened.graph()));
        settle();
    }

    void showProposed(boolean shown) {
        GuiActionRunner.execute(() -> opened.graph().showProposed(shown));
        settle();
    }

    /** Waits until what is drawn is derived from what lies on the desk. */
    private void settle() {
        robot.waitForIdle();
        Pause.pause(
                new Condition("analysis of the newest state") {
                    @Override
                    public boolean test() {
                        return GuiActionRunner.execute(() -> analysed());
                    }
                });
        robot.waitForIdle();
    }

    private boolean analysed() {
        long newest = opened.desk().state().generation();
        return opened.desk().analysis().filter(told -> told.generation() == newest).isPresent();
    }

    Rectangle boundsOf(StepId step) {
        return GuiActionRunner.execute(() -> opened.graph().boundsOf(step).orElseThrow());
    }

    Optional<Rectangle> verbBeside(StepId step) {
        return GuiActionRunner.execute(() -> opened.graph().verbBeside(step));
    }

    <T> T ofGraph(Function<StepGraph, T> answer) {
        return GuiActionRunner.execute(() -> answer.apply(opened.graph()));
    }

    Component named(String name) {
        return robot.finder().findByName(name, true);
    }

    /** Where the card of a folded phase stands. */
    Optional<Rectangle> folded(Phase phase) {
        return ofGraph(graph -> graph.boundsOf(phase));
    }

    /** The steps that are drawn themselves. */
    Set<StepId> drawn() {
        return procedure().steps().stream()
                .map(Step::id)
                .filter(step -> ofGraph(graph -> graph.boundsOf(step)).isPresent())
                .collect(Collectors.toSet());
    }

    void until(String what, BooleanSupplier holds) {
        Pause.pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return holds.getAsBoolean();
                    }
                });
    }

    Point centre(StepId step) {
        Rectangle bounds = boundsOf(step);
        return new Point((int) bounds.getCenterX(), (int) bounds.getCenterY());
    }

    void click(Point point, int times) {
        untilReleased(times, () -> robot.click(surface(), point, MouseButton.LEFT_BUTTON, times));
        settle();
    }

    void drag(Point from, Point to) {
        Component surface = surface();
        robot.moveMouse(surface, from);
        robot.pressMouse(surface, from, MouseButton.LEFT_BUTTON);
        robot.moveMouse(surface, new Point((from.x + to.x) / 2, (from.y + to.y) / 2));
        robot.moveMouse(surface, to);
        robot.waitForIdle();
        untilReleased(1, () -> robot.releaseMouse(MouseButton.LEFT_BUTTON));
        settle();
    }

    /** An idle window proves nothing while the button's event is still on its way to it. */
    private void untilReleased(int times, Runnable act) {
        AtomicInteger released = new AtomicInteger();
        MouseAdapter counting =
                new MouseAdapter() {
                    @Override
                    public void mouseReleased(MouseEvent event) {
                        released.incrementAndGet();
                    }
                };
        Component surface = surface();
        GuiActionRunner.execute(() -> surface.addMouseListener(counting));
        act.run();
        Pause.pause(
                new Condition("the button is released") {
                    @Override
                    public boolean test() {
                        return released.get() >= times;
                    }
                });
        GuiActionRunner.execute(() -> surface.removeMouseListener(counting));
    }

    void press(int key) {
        robot.pressAndReleaseKeys(key);
        settle();
    }

    void type(String text) {
        robot.enterText(text);
        robot.waitForIdle();
    }

    @Override
    public void close() {
        robot.cleanUp();
    }
}
