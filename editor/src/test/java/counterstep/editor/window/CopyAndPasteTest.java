package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.until;
import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.editor.desk.Selection;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.testing.Samples;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cut, copy and paste by keys, on the step graph and in a field. */
final class CopyAndPasteTest {
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

    private Procedure open() {
        return window.ofDesk(desk -> desk.state().procedure());
    }

    private void select(Step step) {
        GuiActionRunner.execute(() -> window.workbench.select(Selection.of(step.id())));
        window.robot.focusAndWaitForFocusGain(window.robot.finder().findByName("step graph"));
    }

    private void untilTitles(List<String> titles) {
        until(
                "the steps are " + titles,
                () -> open().steps().stream().map(Step::title).toList().equals(titles));
    }

    private static List<String> titles(Procedure procedure, int... numbers) {
        return java.util.Arrays.stream(numbers)
                .mapToObj(number -> procedure.steps().get(number - 1).title())
                .toList();
    }

    @Test
    void aStepIsCopiedCutPastedAndAllIsUndone() {
        Procedure before = open();
        select(before.steps().get(2));
        window.control(KeyEvent.VK_C);
        window.control(KeyEvent.VK_V);
        untilTitles(titles(before, 1, 2, 3, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14));
        window.control(KeyEvent.VK_X);
        untilTitles(titles(before, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14));
        assertEquals(before.steps(), open().steps(), "the pasted one was selected and is cut");
        window.control(KeyEvent.VK_Z);
        window.control(KeyEvent.VK_Z);
        until("all is undone", () -> open().equals(before));
    }

    @Test
    void inAFieldTheKeysMeanItsWords() {
        Procedure before = open();
        select(before.steps().get(2));
        window.frame.textBox("step.title").focus().selectAll();
        window.control(KeyEvent.VK_C);
        window.frame.textBox("step.text").focus().selectAll();
        window.control(KeyEvent.VK_V);
        select(before.steps().get(0));
        until(
                "the title is in the text",
                () -> open().steps().get(2).text().equals(before.steps().get(2).title()));
        assertEquals(before.steps().size(), open().steps().size());
    }
}
