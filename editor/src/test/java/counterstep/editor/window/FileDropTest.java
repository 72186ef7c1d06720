package counterstep.editor.window;

import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.editor.desk.Desk;
import counterstep.editor.remembered.PreferencesInMemory;
import counterstep.editor.testing.Carried;
import counterstep.editor.testing.OtherWindow;
import counterstep.testing.Samples;
import java.awt.Component;
import java.awt.Point;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files come from another window by drag and drop, as from the desktop's own file window. */
final class FileDropTest {
    @TempDir private Path folder;

    private StartedWindow window;
    private Path fan;
    private Path pump;
    private Optional<OtherWindow> files = Optional.empty();

    @BeforeEach
    void open() throws IOException {
        fan = copied("fan.procedure.json");
        pump = copied("pump.procedure.json");
        window =
                new StartedWindow(
                        new PreferencesInMemory(), folder.resolve("data"), Optional.of(fan));
        window.untilOpen(fan);
    }

    private Path copied(String name) throws IOException {
        return Files.copy(Samples.file(Samples.SUPPLY_FAN), folder.resolve(name));
    }

    @AfterEach
    void close() {
        files.ifPresent(OtherWindow::close);
        window.cleanUp();
    }

    private void drop(Component target, Path... paths) {
        files.ifPresent(OtherWindow::close);
        OtherWindow shown = OtherWindow.with(window.robot, Carried.files(paths));
        files = Optional.of(shown);
        shown.drop(
                target,
                StartedWindow.on(() -> new Point(target.getWidth() / 2, target.getHeight() / 2)));
    }

    @Test
    void aFileDroppedOnTheStepGraphIsOpened() {
        drop(window.robot.finder().findByName("step graph", true), pump);
        window.untilOpen(pump);
    }

    @Test
    void listsLetItThroughAndUnsavedWorkIsAskedFor() {
        window.retitle("Mine");
        drop(window.frame.list("items").target(), pump);
        window.answer("Keep open");
        assertTrue(window.ofDesk(Desk::unsaved));
        drop(window.frame.list("items").target(), pump);
        window.answer("Discard");
        window.untilOpen(pump);
    }
}
