package counterstep.editor.clipboard;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import counterstep.editor.analysis.Analyst;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.TestPhoto;
import counterstep.editor.testing.Carried;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.testing.CameraNote;
import java.awt.Color;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PhotoIntakeTest {
    private static final StepId OFF = new StepId("s1");

    @TempDir private Path folder;

    private final CompletableFuture<String> ended = new CompletableFuture<>();
    private Desk desk;

    private String added(Transferable carried) throws Exception {
        SwingUtilities.invokeAndWait(
                () -> {
                    Procedure lid =
                            Procedure.titled("lid", "Lid")
                                    .draft()
                                    .steps(List.of(Step.titled(OFF, Phase.TEARDOWN, "Lid off")))
                                    .procedure();
                    desk = new Desk(lid, new Analyst(Runnable::run, Runnable::run));
                    long before = desk.state().generation();
                    desk.onState(
                            state -> {
                                if (state.generation() != before) {
                                    ended.complete("");
                                }
                            });
                    new PhotoIntake(desk, ended::complete).add(carried, OFF);
                });
        return ended.get(30, TimeUnit.SECONDS);
    }

    private void onDesk(Runnable act) throws Exception {
        SwingUtilities.invokeAndWait(act);
    }

    @Test
    void aFileIsAddedToItsStepTurnedAsTheCameraNotedAndUntouched() throws Exception {
        byte[] taken = CameraNote.orientation(TestPhoto.file(Color.RED, "jpg"), 6);
        File file = Files.write(folder.resolve("lid.jpg"), taken).toFile();
        assertEquals("", added(new Carried(DataFlavor.javaFileListFlavor, List.of(file))));
        onDesk(
                () -> {
                    Procedure now = desk.state().procedure();
                    assertEquals(1, now.photos().get(0).quarterTurns());
                    assertEquals(now.photos().get(0).id(), now.step(OFF).photos().get(0).photo());
                    String name = now.photos().get(0).file();
                    assertArrayEquals(taken, desk.photos().folder().bytes(name).orElseThrow());
                    desk.undo();
                    assertEquals(List.of(), desk.state().procedure().photos());
                });
    }

    @Test
    void aCopiedImageIsAdded() throws Exception {
        assertEquals("", added(Carried.image(TestPhoto.pixels(Color.RED))));
        onDesk(() -> assertEquals(1, desk.state().procedure().step(OFF).photos().size()));
    }

    @Test
    void whatIsNoPhotoIsRefusedAndNothingIsAdded() throws Exception {
        File file = Files.writeString(folder.resolve("lid.jpg"), "no photo").toFile();
        assertEquals(
                "lid.jpg: neither a JPEG nor a PNG nor a GIF photo; save it as one of these"
                        + " first. No photo was added.",
                added(new Carried(DataFlavor.javaFileListFlavor, List.of(file))));
    }

    @Test
    void textCarriesNone() throws Exception {
        onDesk(
                () -> {
                    Desk blank =
                            new Desk(
                                    Procedure.titled("lid", "Lid"),
                                    new Analyst(Runnable::run, Runnable::run));
                    assertFalse(
                            new PhotoIntake(blank, ended::complete)
                                    .add(new StringSelection("lid"), OFF));
                });
    }
}
