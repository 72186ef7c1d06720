package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.until;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.edit.RenameStep;
import counterstep.editor.desk.Desk;
import counterstep.model.Procedure;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JDialog;
import javax.swing.JFrame;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ChangedElsewhereTest {
    @TempDir private Path folder;

    private StartedWindow window;
    private Path file;

    @BeforeEach
    void openASample() {
        window = StartedWindow.showing(folder, Samples.SUPPLY_FAN);
        file = window.ofDesk(desk -> desk.state().file()).orElseThrow();
    }

    @AfterEach
    void close() {
        window.cleanUp();
    }

    private void anotherProgramRenamesTheFirstStep(String title) {
        Procedure now = ProcedureFile.read(file);
        ProcedureFile.write(file, new RenameStep(now.steps().get(0).id(), title).apply(now));
    }

    private static String firstStep(Procedure procedure) {
        return procedure.steps().get(0).title();
    }

    private String firstStepHere() {
        return window.ofDesk(desk -> firstStep(desk.state().procedure()));
    }

    private boolean unsaved() {
        return window.ofDesk(Desk::unsaved);
    }

    /** The user looks at another window and comes back. */
    private void comeBack() {
        JFrame other =
                GuiActionRunner.execute(
                        () -> {
                            JFrame frame = new JFrame("other");
                            frame.setSize(200, 100);
                            frame.setVisible(true);
                            frame.toFront();
                            return frame;
                        });
        until("another window is used", () -> GuiActionRunner.execute(other::isActive));
        GuiActionRunner.execute(
                () -> {
                    other.dispose();
                    window.workbench.frame().toFront();
                });
    }

    private boolean asked() {
        return !window.robot
                .finder()
                .findAll(found -> found instanceof JDialog && found.isShowing())
                .isEmpty();
    }

    private void untilBack() {
        until(
                "the window is used again",
                () -> GuiActionRunner.execute(() -> window.workbench.frame().isActive()));
    }

    @Test
    void whatAnotherProgramWroteIsOpenedWhenTheWriterSaysSo() {
        anotherProgramRenamesTheFirstStep("Pull the plug out");
        comeBack();
        String words = window.answer("Open");
        assertEquals(
                "bench-supply-fan.procedure.json was changed by another program. Open it as it is now?",
                words);
        until("it lies open", () -> firstStepHere().equals("Pull the plug out"));
        assertFalse(unsaved());
    }

    @Test
    void whoKeepsTheirOwnIsAskedOnceAndHasItUnsaved() {
        String mine = firstStepHere();
        anotherProgramRenamesTheFirstStep("Pull the plug out");
        comeBack();
        window.answer("Keep mine");
        until("it counts as unsaved", this::unsaved);
        untilBack();
        comeBack();
        untilBack();
        anotherProgramRenamesTheFirstStep("Pull it");
        comeBack();
        String words = window.answer("Keep mine");
        assertTrue(words.endsWith("gives up what you changed here since you saved."), words);
        assertEquals(mine, firstStepHere());
    }

    @Test
    void savingOverWhatAnotherProgramWroteAsksFirst() {
        window.retitle("Pump");
        anotherProgramRenamesTheFirstStep("Pull the plug out");
        window.control(KeyEvent.VK_S);
        window.answer("Keep open");
        assertTrue(unsaved());
        assertEquals("Pull the plug out", firstStep(ProcedureFile.read(file)));
        window.control(KeyEvent.VK_S);
        window.answer("Replace");
        until("it is saved", () -> !unsaved());
        assertEquals("Pump", ProcedureFile.read(file).titleBlock().title());
        assertEquals(firstStepHere(), firstStep(ProcedureFile.read(file)));
    }

    @Test
    void aFileThatIsGoneIsToldAndWrittenAgain() throws IOException {
        Files.delete(file);
        comeBack();
        String words = window.answer("OK");
        assertEquals(
                "bench-supply-fan.procedure.json is no longer there. Your work is still open.",
                words);
        assertTrue(unsaved());
        window.control(KeyEvent.VK_S);
        until("it is saved", () -> !unsaved());
        assertTrue(Files.exists(file));
    }

    @Test
    void whatTheWindowSavedItselfIsNoChange() {
        for (String title : List.of("Pump", "Fan")) {
            window.retitle(title);
            window.control(KeyEvent.VK_S);
            until("it is saved", () -> !unsaved());
            assertFalse(asked());
        }
        comeBack();
        untilBack();
        anotherProgramRenamesTheFirstStep("Pull the plug out");
        comeBack();
        window.answer("Open");
        until("only that was asked", () -> firstStepHere().equals("Pull the plug out"));
    }
}
