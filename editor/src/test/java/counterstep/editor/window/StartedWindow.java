package counterstep.editor.window;

import counterstep.editor.desk.Desk;
import counterstep.editor.remembered.PreferencesInMemory;
import counterstep.editor.remembered.Remembered;
import counterstep.testing.Samples;
import java.awt.event.KeyEvent;
import java.awt.event.WindowEvent;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.prefs.Preferences;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.assertj.swing.core.BasicRobot;
import org.assertj.swing.core.Robot;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.JOptionPaneFinder;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.fixture.JOptionPaneFixture;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;

/** The window as the program starts it, with a memory and a data folder that a test owns. */
final class StartedWindow {
    static final Instant NOW = Instant.parse("2026-01-20T14:02:00Z");

    final Robot robot = BasicRobot.robotWithNewAwtHierarchy();
    private final Queue<Runnable> waiting = new ConcurrentLinkedQueue<>();
    final Desk desk;
    final Workbench workbench;
    final FrameFixture frame;

    StartedWindow(Preferences preferences, Path dataFolder, Optional<Path> file) {
        Home home =
                new Home(
                        new Remembered(preferences),
                        dataFolder,
                        Clock.fixed(NOW, ZoneId.systemDefault()),
                        waiting::add);
        desk =
                GuiActionRunner.execute(
                        () -> {
                            home.remembered().theme().show();
                            return Desk.of(DocumentWork.blank());
                        });
        workbench = GuiActionRunner.execute(() -> new Workbench(desk));
        frame = new FrameFixture(robot, workbench.frame());
        try {
            GuiActionRunner.execute(() -> workbench.begin(home, file));
            until("the window is there", () -> on(() -> workbench.frame().isActive()));
        } catch (RuntimeException | AssertionError failed) {
            robot.cleanUp(); // else the next test would wait for the screen for ever
            throw failed;
        }
        robot.waitForIdle();
    }

    /** A new user's window, a copy of that sample in it; its photos stay where they are. */
    static StartedWindow showing(Path folder, String sample) {
        Path file = folder.resolve(sample + ".procedure.json");
        try {
            Files.copy(Samples.file(sample), file);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        StartedWindow window =
                new StartedWindow(
                        new PreferencesInMemory(), folder.resolve("data"), Optional.of(file));
        window.untilOpen(file);
        return window;
    }

    static <T> T on(Supplier<T> answer) {
        return GuiActionRunner.execute(answer::get);
    }

    <T> T ofDesk(Function<Desk, T> answer) {
        robot.waitForIdle();
        return on(() -> answer.apply(desk));
    }

    static void until(String what, Supplier<Boolean> holds) {
        Pause.pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return holds.get();
                    }
                });
    }

    /** Until the file is open, and all panels show what the checks say of it. */
    void untilOpen(Path file) {
        until(
                file + " lies open",
                () -> ofDesk(each -> each.state().file().equals(Optional.of(file))));
        until("it is checked", () -> ofDesk(StartedWindow::isChecked));
    }

    private static boolean isChecked(Desk desk) {
        return desk.analysis()
                .filter(each -> each.generation() == desk.state().generation())
                .isPresent();
    }

    void control(int key) {
        robot.pressKey(KeyEvent.VK_CONTROL);
        robot.pressAndReleaseKeys(key);
        robot.releaseKey(KeyEvent.VK_CONTROL);
    }

    /** Types another title of the document. */
    void retitle(String title) {
        frame.textBox("procedure.title").focus().selectAll();
        frame.textBox("procedure.title").enterText(title);
        frame.textBox("procedure.title").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until(
                "the title is " + title,
                () -> ofDesk(each -> each.state().procedure().titleBlock().title()).equals(title));
    }

    /** Whether something waits for some seconds to pass. */
    boolean waits() {
        return !waiting.isEmpty();
    }

    /** Some seconds pass. */
    void someSecondsPass() {
        while (waits()) {
            Runnable next = waiting.remove();
            GuiActionRunner.execute(() -> next.run());
        }
    }

    /** Answers the question that is asked, and returns its words. */
    String answer(String button) {
        JOptionPaneFixture pane = JOptionPaneFinder.findOptionPane().using(robot);
        String words = robot.finder().findByType(pane.target(), JTextArea.class).getText();
        pane.buttonWithText(button).click();
        return words;
    }

    /** The user closes the window. */
    void close() {
        SwingUtilities.invokeLater(
                () ->
                        workbench
                                .frame()
                                .dispatchEvent(
                                        new WindowEvent(
                                                workbench.frame(), WindowEvent.WINDOW_CLOSING)));
    }

    void untilClosed() {
        until("the window is closed", () -> on(() -> !workbench.frame().isDisplayable()));
    }

    void cleanUp() {
        robot.cleanUp();
    }
}
