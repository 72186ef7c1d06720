package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.until;
import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.editor.desk.Selection;
import counterstep.editor.testing.Choice;
import counterstep.model.Procedure;
import counterstep.model.Standing;
import counterstep.model.Trial;
import counterstep.testing.Samples;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Saying how far a step has been tried. */
final class StandingTest {
    @TempDir private Path folder;

    private StartedWindow window;

    @BeforeEach
    void openASample() {
        window = StartedWindow.showing(folder, Samples.SUPPLY_FAN);
    }

    @AfterEach
    void close() {
        window.cleanUp();
    }

    @Test
    void aStepTriedOnAUnitIsWrittenAgainWhenItsTextChanges() {
        Procedure open = window.ofDesk(desk -> desk.state().procedure());
        GuiActionRunner.execute(
                () -> window.workbench.select(Selection.of(open.steps().get(1).id())));
        window.control(KeyEvent.VK_T);
        DialogFixture dialog = WindowFinder.findDialog("Standing of 1 step").using(window.robot);
        Choice.of(dialog, "standing.trial").take(Trial.WALKED_THROUGH.word());
        dialog.textBox("standing.by").setText("A. Holm");
        dialog.textBox("standing.unit").setText("B3-17");
        dialog.textBox("standing.date").setText("2026-02-11");
        dialog.button("Set").click();
        until("it is set", () -> standing().trial() == Trial.WALKED_THROUGH);
        assertEquals(
                new Standing(Trial.WALKED_THROUGH, "A. Holm", "B3-17", "2026-02-11"), standing());
        window.frame.textBox("step.tried-on").requireText("B3-17");
        window.frame.textBox("step.title").focus().selectAll();
        window.frame.textBox("step.title").enterText("Pull the plug, keep it in sight");
        window.frame.textBox("step.title").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until("it is written again", () -> standing().equals(Standing.WRITTEN));
    }

    private Standing standing() {
        return window.ofDesk(desk -> desk.state().procedure().steps().get(1).standing());
    }
}
