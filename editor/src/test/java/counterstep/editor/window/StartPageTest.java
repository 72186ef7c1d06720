package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.on;
import static counterstep.editor.window.StartedWindow.until;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.editor.remembered.PreferencesInMemory;
import counterstep.editor.remembered.RecentFile;
import counterstep.editor.remembered.Remembered;
import counterstep.editor.theme.Theme;
import counterstep.model.Severity;
import counterstep.testing.Samples;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.prefs.Preferences;
import javax.swing.JLabel;
import javax.swing.JSplitPane;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.fixture.JFileChooserFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class StartPageTest {
    @TempDir private Path folder;

    private final Preferences preferences = new PreferencesInMemory();
    private StartedWindow window;

    @AfterEach
    void close() {
        window.cleanUp();
    }

    private void start(Optional<Path> file) {
        window = new StartedWindow(preferences, folder.resolve("data"), file);
    }

    private void untilTheSamplesAreDrawn() {
        until(
                "the samples are drawn",
                () -> {
                    window.robot.waitForIdle();
                    return on(
                            () ->
                                    window.robot
                                                    .finder()
                                                    .findAll(
                                                            each ->
                                                                    each instanceof JLabel label
                                                                            && label.isShowing()
                                                                            && label.getText()
                                                                                    .equals(
                                                                                            "14 steps"))
                                                    .size()
                                            == 1);
                });
    }

    private Path copy(String sample) throws Exception {
        Path file = folder.resolve(sample + ".procedure.json");
        return Files.copy(Samples.file(sample), file);
    }

    private boolean startPageIsShown() {
        return on(
                () ->
                        window
                                .robot
                                .finder()
                                .findAll(each -> "start page".equals(each.getName()))
                                .stream()
                                .anyMatch(each -> each.isShowing()));
    }

    @Test
    void withoutAFileThePageIsShownAndSpaceBeginsANewProcedure() {
        start(Optional.empty());
        assertTrue(startPageIsShown());
        until(
                "the first choice has the keyboard",
                () -> on(() -> window.frame.button("New procedure").target().isFocusOwner()));
        window.robot.pressAndReleaseKeys(KeyEvent.VK_SPACE);
        until("the page is left", () -> !startPageIsShown());
        window.retitle("Pump");
        assertEquals("Pump", window.ofDesk(desk -> desk.state().procedure().titleBlock().title()));
    }

    @Test
    void withAFileThePageIsNotShown() throws Exception {
        Path file = copy(Samples.SUPPLY_FAN);
        start(Optional.of(file));
        window.untilOpen(file);
        assertFalse(startPageIsShown());
    }

    @Test
    void aSampleIsOpenedAsACopyWithAClick() {
        start(Optional.empty());
        untilTheSamplesAreDrawn();
        window.frame.button("Open a copy: Fan of a bench supply").click();
        until("the page is left", () -> !startPageIsShown());
        int steps = window.ofDesk(desk -> desk.state().procedure().steps().size());
        assertEquals(14, steps);
        assertEquals(Optional.empty(), window.ofDesk(desk -> desk.state().file()));
    }

    @Test
    void aFileIsOpenedByKey() throws Exception {
        Path file = copy(Samples.SUPPLY_FAN);
        start(Optional.empty());
        window.control(KeyEvent.VK_O);
        JFileChooserFixture chooser = JFileChooserFinder.findFileChooser().using(window.robot);
        chooser.fileNameTextBox().setText(file.toString());
        chooser.approve();
        window.untilOpen(file);
        assertFalse(startPageIsShown());
    }

    @Test
    void whatLayOpenIsListedWithItsWorstFindingAndOpenedWithAClick() throws Exception {
        Path file = copy(Samples.HURRIED);
        start(Optional.of(file));
        until("it is noted", () -> !new Remembered(preferences).recentFiles().isEmpty());
        RecentFile noted = new Remembered(preferences).recentFiles().get(0);
        assertEquals(file, noted.file());
        assertEquals(Optional.of(Severity.ERROR), noted.worst());
        assertEquals(StartedWindow.NOW, noted.seen());
        window.close();
        window.untilClosed();
        window.cleanUp();

        start(Optional.empty());
        window.frame.button(noted.title()).click();
        window.untilOpen(file);
        assertFalse(startPageIsShown());
    }

    @Test
    void aRecentFileIsOpenedFromTheMenu() throws Exception {
        Path fan = copy(Samples.SUPPLY_FAN);
        Path unit = copy(Samples.STICK_UNIT);
        start(Optional.of(fan));
        until("it is noted", () -> !new Remembered(preferences).recentFiles().isEmpty());
        on(
                () -> {
                    window.workbench.openFile(unit);
                    return unit;
                });
        window.untilOpen(unit);
        window.frame.menuItem("File").click();
        window.frame.menuItem("Open recent").click();
        window.frame.menuItem(fan.toString()).click();
        window.untilOpen(fan);
    }

    @Test
    void aRecentFileThatIsGoneIsToldAndForgotten() throws Exception {
        Path file = copy(Samples.SUPPLY_FAN);
        start(Optional.of(file));
        until("it is noted", () -> !new Remembered(preferences).recentFiles().isEmpty());
        String title = new Remembered(preferences).recentFiles().get(0).title();
        window.close();
        window.untilClosed();
        window.cleanUp();
        Files.delete(file);

        start(Optional.empty());
        window.frame.button(title).click();
        assertTrue(window.answer("OK").contains("there is no such file"));
        assertTrue(startPageIsShown());
        assertEquals(List.of(), new Remembered(preferences).recentFiles());
    }

    @Test
    void theWindowComesUpAsItWasLeft() throws Exception {
        Path file = copy(Samples.SUPPLY_FAN);
        start(Optional.of(file));
        window.untilOpen(file);
        window.frame.resizeTo(new Dimension(1300, 850));
        window.frame.moveTo(new Point(120, 70));
        window.control(KeyEvent.VK_D);
        on(() -> window.frame.splitPane("items").target()).setDividerLocation(351);
        window.robot.waitForIdle();
        Rectangle left = on(() -> window.workbench.frame().getBounds());
        window.close();
        window.untilClosed();
        window.cleanUp();

        start(Optional.of(file));
        assertEquals(Theme.DARK, on(Theme::current));
        until(
                "the window is where it was",
                () -> on(() -> window.workbench.frame().getBounds()).equals(left));
        JSplitPane items = window.frame.splitPane("items").target();
        until("the items are as wide as before", () -> on(items::getDividerLocation) == 351);
    }
}
