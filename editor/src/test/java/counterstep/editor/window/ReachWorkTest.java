package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.on;
import static counterstep.editor.window.StartedWindow.until;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.editor.desk.Selection;
import counterstep.editor.remembered.PreferencesInMemory;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.testing.Samples;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One key shows the steps to the selected part; Escape ends it; they open as a document. */
final class ReachWorkTest {
    private static final ItemId RIGHT_GRIP = new ItemId("p4");
    private static final String NEEDED = "right grip needs 21 of 58 steps";

    @TempDir private Path folder;

    private StartedWindow window;

    @BeforeEach
    void open() throws IOException {
        Path file = folder.resolve("sample.procedure.json");
        Files.copy(Samples.file(Samples.STICK_UNIT), file);
        window =
                new StartedWindow(
                        new PreferencesInMemory(), folder.resolve("data"), Optional.of(file));
        window.untilOpen(file);
    }

    @AfterEach
    void close() {
        window.cleanUp();
    }

    private String totals() {
        return window.frame.label("totals").text();
    }

    private Procedure procedure() {
        return window.ofDesk(desk -> desk.state().procedure());
    }

    private void reachTheRightGrip() {
        window.ofDesk(
                desk -> {
                    desk.select(Selection.of(RIGHT_GRIP));
                    return desk;
                });
        window.control(KeyEvent.VK_I);
        until("the status line tells it", () -> totals().startsWith(NEEDED));
    }

    @Test
    void theStatusLineTellsHowManyStepsAreNeededUntilEscape() {
        reachTheRightGrip();
        Procedure before = procedure();

        window.robot.pressAndReleaseKeys(KeyEvent.VK_ESCAPE);

        until("all steps are shown", () -> totals().startsWith("58 steps"));
        assertEquals(before, procedure(), "nothing was changed");
    }

    @Test
    void theNeededStepsOpenAsADocumentWithoutErrors() {
        reachTheRightGrip();

        on(
                () -> {
                    window.frame.menuItem("Open the steps to this part").target().doClick();
                    return true;
                });

        until("the steps lie open", () -> procedure().steps().size() == 21);
        assertTrue(procedure().titleBlock().title().endsWith(": to reach right grip"));
        until("all of them are shown", () -> totals().startsWith("21 steps"));
        assertEquals(Optional.empty(), window.ofDesk(desk -> desk.state().file()));
    }
}
