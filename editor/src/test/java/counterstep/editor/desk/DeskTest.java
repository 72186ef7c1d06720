package counterstep.editor.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.edit.AddStep;
import counterstep.edit.DeleteSteps;
import counterstep.edit.RenameStep;
import counterstep.editor.analysis.Analysis;
import counterstep.editor.analysis.Analyst;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

@ExtendWith(OnEventThread.class)
class DeskTest {
    private static final StepId LID_OFF = new StepId("s1");
    private static final Path FILE = Path.of("lid.procedure.json");

    private final List<Runnable> waiting = new ArrayList<>();

    private static Procedure lid() {
        return Procedure.titled("lid", "Lid")
                .draft()
                .steps(List.of(Step.titled(LID_OFF, Phase.TEARDOWN, "Lid off")))
                .procedure();
    }

    private static RenameStep renamed(String title) {
        return new RenameStep(LID_OFF, title);
    }

    private Desk desk() {
        return new Desk(lid(), new Analyst(Runnable::run, Runnable::run));
    }

    private static String titleOn(Desk desk) {
        return desk.state().procedure().step(LID_OFF).title();
    }

    @Test
    void anEditShowsAtOnceAndRaisesTheGeneration() {
        Desk desk = desk();
        long before = desk.state().generation();
        assertEquals(Optional.empty(), desk.apply(renamed("Cover off")));
        assertEquals("Cover off", titleOn(desk));
        assertEquals(before + 1, desk.state().generation());
        assertEquals(Optional.of("Rename step"), desk.undoName());
    }

    @Test
    void undoneIsTheOlderDocumentUnderANewGeneration() {
        Desk desk = desk();
        Procedure before = desk.state().procedure();
        desk.apply(renamed("Cover off"));
        desk.undo();
        assertSame(before, desk.state().procedure());
        assertEquals(3, desk.state().generation());
        desk.redo();
        assertEquals("Cover off", titleOn(desk));
        assertEquals(4, desk.state().generation());
    }

    @Test
    void aNewEditForgetsWhatWasUndone() {
        Desk desk = desk();
        desk.apply(renamed("Cover off"));
        desk.undo();
        desk.apply(renamed("Top off"));
        assertEquals(Optional.empty(), desk.redoName());
        desk.redo();
        assertEquals("Top off", titleOn(desk));
    }

    @Test
    void anEditThatChangesNothingLeavesNoTrace() {
        Desk desk = desk();
        DeskState before = desk.state();
        assertEquals(Optional.empty(), desk.apply(renamed("Lid off")));
        assertSame(before, desk.state());
        assertEquals(Optional.empty(), desk.undoName());
    }

    @Test
    void aRefusedEditSaysWhyAndChangesNothing() {
        Desk desk = desk();
        DeskState before = desk.state();
        Optional<String> refusal = desk.apply(new RenameStep(new StepId("s9"), "Nowhere"));
        assertEquals(Optional.of("no step s9"), refusal);
        assertSame(before, desk.state());
        assertEquals(Optional.empty(), desk.undoName());
    }

    @Test
    void selectingRaisesNoGenerationAndKeepsToWhatIsThere() {
        Desk desk = desk();
        desk.select(Selection.of(LID_OFF));
        assertEquals(Optional.of(LID_OFF), desk.state().selection().onlyStep());
        assertEquals(1, desk.state().generation());
        desk.select(Selection.of(new StepId("s9")));
        assertTrue(desk.state().selection().isEmpty());
    }

    @Test
    void whatIsDeletedLeavesTheSelection() {
        Desk desk = desk();
        desk.select(Selection.of(LID_OFF));
        desk.apply(new DeleteSteps(Set.of(LID_OFF)));
        assertTrue(desk.state().selection().isEmpty());
    }

    @Test
    void savedBelongsToTheGenerationThatWasWritten() {
        Desk desk = desk();
        assertFalse(desk.unsaved());
        desk.apply(renamed("Cover off"));
        assertTrue(desk.unsaved());
        long written = desk.state().generation();
        desk.apply(renamed("Top off"));
        desk.saved(written, FILE);
        assertTrue(desk.unsaved());
        desk.saved(desk.state().generation(), FILE);
        assertFalse(desk.unsaved());
        assertEquals(Optional.of(FILE), desk.state().file());
    }

    @Test
    void undoneBackToWhatWasSavedNothingIsUnsaved() {
        Desk desk = desk();
        desk.saved(desk.state().generation(), FILE);
        desk.apply(renamed("Cover off"));
        desk.undo();
        assertFalse(desk.unsaved());
    }

    @Test
    void anOpenedDocumentHasNoHistory() {
        Desk desk = desk();
        desk.apply(renamed("Cover off"));
        desk.select(Selection.of(LID_OFF));
        desk.opened(Procedure.titled("fan", "Fan"), Optional.of(FILE));
        assertEquals(Optional.empty(), desk.undoName());
        assertFalse(desk.unsaved());
        assertTrue(desk.state().selection().isEmpty());
        assertEquals(3, desk.state().generation());
    }

    @Test
    void aListenerThatEditsIsTheLastToBeHeard() {
        Desk desk = desk();
        List<String> heard = new ArrayList<>();
        desk.onState(
                state -> {
                    if (state.procedure().steps().size() == 2) {
                        desk.apply(renamed("Lid off, first"));
                    }
                });
        desk.onState(state -> heard.add(state.procedure().step(LID_OFF).title()));
        Step second = Step.titled(new StepId("s2"), Phase.REASSEMBLY, "Lid on");
        desk.apply(AddStep.atEnd(second));
        assertEquals(List.of("Lid off", "Lid off, first"), heard);
    }

    @Test
    void theLastAnalysisIsKeptAndMarkedUntilANewerOneIsThere() {
        Desk desk = new Desk(lid(), new Analyst(waiting::add, Runnable::run));
        List<String> heard = new ArrayList<>();
        desk.onAnalysis(analysis -> heard.add(line(analysis)));
        work();
        desk.apply(renamed("Cover off"));
        assertEquals(
                List.of(
                        "1",
                        "1 with fixes",
                        "1 with fixes and crew",
                        "1 with fixes and crew, being renewed"),
                heard);
        heard.clear();
        work();
        assertEquals(List.of("2", "2 with fixes", "2 with fixes and crew"), heard);
    }

    @Test
    void anotherThreadIsRefused() {
        Desk desk = desk();
        CompletionException thrown =
                assertThrows(
                        CompletionException.class,
                        () -> CompletableFuture.runAsync(() -> desk.undo()).join());
        assertEquals(IllegalStateException.class, thrown.getCause().getClass());
    }

    private void work() {
        List.copyOf(waiting).forEach(Runnable::run);
        waiting.clear();
    }

    private static String line(Analysis analysis) {
        return analysis.generation()
                + (analysis.fixes().isPresent() ? " with fixes" : "")
                + (analysis.crew().isPresent() ? " and crew" : "")
                + (analysis.renewing() ? ", being renewed" : "");
    }
}
