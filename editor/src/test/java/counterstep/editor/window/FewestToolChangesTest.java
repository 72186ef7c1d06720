package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.until;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.Procedure;
import counterstep.testing.Samples;
import counterstep.toolchange.ToolChanges;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One key shows the order of fewest tool changes; it is taken as one edit, and undone as one. */
final class FewestToolChangesTest {
    @TempDir private Path folder;

    private StartedWindow window;

    private void open(String sample) {
        window = StartedWindow.showing(folder, sample);
    }

    @AfterEach
    void close() {
        window.cleanUp();
    }

    private Procedure procedure() {
        return window.ofDesk(desk -> desk.state().procedure());
    }

    private int changes() {
        return ToolChanges.inPageOrder(procedure()).count();
    }

    @Test
    void theOrderIsShownTakenAndUndone() {
        open(Samples.STICK_UNIT);
        Procedure before = procedure();
        int now = changes();
        window.control(KeyEvent.VK_G);
        DialogFixture dialog = WindowFinder.findDialog("Fewest tool changes").using(window.robot);
        String words = dialog.textBox("what will change").text();
        assertTrue(words.startsWith("Proved: no order"), words);
        assertEquals("Fewest possible: 31, now " + now, dialog.label("figures").text());
        dialog.button("Apply").click();
        until("the page has another order", () -> !procedure().equals(before));
        int fewest = changes();
        assertTrue(fewest < now, () -> fewest + " against " + now);
        until(
                "the status line tells it",
                () ->
                        window.frame
                                .label("totals")
                                .text()
                                .contains(fewest + " tool changes, fewest possible " + fewest));
        window.control(KeyEvent.VK_Z);
        until("it is undone", () -> procedure().equals(before));
    }

    @Test
    void aPageThatHasThemAlreadyIsLeftAsItIs() {
        open(Samples.SUPPLY_FAN);
        Procedure before = procedure();
        window.control(KeyEvent.VK_G);
        String words = window.answer("OK");
        assertTrue(words.contains("Fewest possible: " + changes()), words);
        assertEquals(before, procedure());
    }
}
