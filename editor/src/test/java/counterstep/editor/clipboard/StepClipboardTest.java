package counterstep.editor.clipboard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.editor.desk.Desk;
import counterstep.editor.desk.Selection;
import counterstep.editor.desk.TestPhoto;
import counterstep.model.Item;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import java.awt.Color;
import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class StepClipboardTest {
    private final Procedure fan = ProcedureFile.read(Samples.file(Samples.SUPPLY_FAN));
    private final Clipboard board = new Clipboard("shared");

    /** A window's desk and its clipboard commands. */
    private record Seat(Desk desk, StepClipboard clipboard) {
        <T> T ask(Function<Seat, T> question) {
            return GuiActionRunner.execute(() -> question.apply(this));
        }

        Procedure procedure() {
            return ask(seat -> seat.desk.state().procedure());
        }

        Optional<String> paste() {
            return ask(seat -> seat.clipboard.paste());
        }

        void act(Set<StepId> selected, Runnable command) {
            GuiActionRunner.execute(
                    () -> {
                        desk.select(Selection.ofSteps(selected));
                        command.run();
                    });
        }
    }

    private Seat seat(Procedure procedure) {
        return GuiActionRunner.execute(
                () -> {
                    Desk desk = Desk.of(procedure);
                    return new Seat(
                            desk,
                            new StepClipboard(desk, board, new PhotoIntake(desk, sentence -> {})));
                });
    }

    private Set<StepId> steps(int... numbers) {
        Set<StepId> ids = new LinkedHashSet<>();
        for (int number : numbers) {
            ids.add(fan.steps().get(number - 1).id());
        }
        return ids;
    }

    @Test
    void stepsGoFromOneWindowToAnotherWithWhatTheyName() {
        Seat one = seat(fan);
        Seat other = seat(Procedure.titled("blank", "Blank"));
        one.act(steps(3, 4), one.clipboard()::copy);
        assertEquals(Optional.empty(), other.paste());
        Procedure there = other.procedure();
        assertEquals(titles(fan).subList(2, 4), titles(there));
        List<String> names = there.items().stream().map(Item::name).toList();
        assertTrue(names.contains("cover screws"), () -> "came along: " + names);
        assertEquals("Paste 2 steps", other.ask(seat -> seat.desk().undoName()).orElse(""));
        assertEquals(
                ids(there),
                other.ask(seat -> List.copyOf(seat.desk().state().selection().steps())));
    }

    @Test
    void aCutStepIsGoneAndComesBackByPaste() {
        Seat one = seat(fan);
        one.act(steps(5), one.clipboard()::cut);
        assertEquals(fan.steps().size() - 1, one.procedure().steps().size());
        one.act(steps(4), () -> assertEquals(Optional.empty(), one.clipboard().paste()));
        assertEquals(titles(fan), titles(one.procedure()));
        assertEquals(fan.items(), one.procedure().items());
    }

    @Test
    void otherProgramsGetText() throws Exception {
        Seat one = seat(fan);
        one.act(steps(3), one.clipboard()::copy);
        String text = (String) board.getData(DataFlavor.stringFlavor);
        Step third = fan.steps().get(2);
        assertTrue(text.startsWith("3. " + third.title() + "\n"), text);
        assertTrue(text.contains(third.text().strip()), text);
    }

    @Test
    void linesOfTextBecomeStepsAsTheQuickLineReadsThem() {
        Seat one = seat(Procedure.titled("blank", "Blank"));
        board.setContents(
                new StringSelection("1. 6 x PH1 cover screws out\n\n2. cover off\n"), null);
        assertEquals(Optional.empty(), one.paste());
        Procedure there = one.procedure();
        assertEquals(2, there.steps().size());
        assertEquals(6, there.steps().get(0).actions().get(0).count());
        assertEquals(1, there.links().size(), "linked as told");
        one.act(Set.of(), () -> one.desk().undo());
        assertEquals(List.of(), one.procedure().steps());
    }

    @Test
    void anEmptyClipboardIsToldAndChangesNothing() {
        Seat one = seat(fan);
        board.setContents(new StringSelection(" \n"), null);
        assertTrue(one.paste().isPresent());
        one.act(Set.of(), one.clipboard()::copy);
        assertTrue(one.paste().isPresent(), "nothing selected, nothing copied");
        assertSame(fan, one.procedure());
    }

    /** As file windows copy: the files, and their names for those who take text only. */
    private record FilesAsTextToo(List<File> files) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.stringFlavor, DataFlavor.javaFileListFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return List.of(getTransferDataFlavors()).contains(flavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) {
            return flavor.equals(DataFlavor.stringFlavor) ? files.get(0).getPath() : files;
        }
    }

    @Test
    void filesThatAreOfferedAsTextTooArePhotosOfTheSelectedStep(@TempDir Path folder)
            throws Exception {
        byte[] photo = TestPhoto.file(Color.RED, "png");
        File file = Files.write(folder.resolve("lid.png"), photo).toFile();
        board.setContents(new FilesAsTextToo(List.of(file)), null);
        Seat one = seat(fan);
        String told = one.paste().orElseThrow();
        assertTrue(told.startsWith("Files were copied."), told);
        assertSame(fan, one.procedure());
        CompletableFuture<Procedure> changed = new CompletableFuture<>();
        one.act(
                steps(3),
                () -> {
                    one.desk()
                            .onState(
                                    state -> {
                                        if (!state.procedure().equals(fan)) {
                                            changed.complete(state.procedure());
                                        }
                                    });
                    assertEquals(Optional.empty(), one.clipboard().paste());
                });
        Procedure now = changed.get(30, TimeUnit.SECONDS);
        assertEquals(titles(fan), titles(now));
        assertEquals(fan.photos().size() + 1, now.photos().size());
    }

    private static List<StepId> ids(Procedure procedure) {
        return procedure.steps().stream().map(Step::id).toList();
    }

    private static List<String> titles(Procedure procedure) {
        return procedure.steps().stream().map(Step::title).toList();
    }
}
