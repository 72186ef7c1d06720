package counterstep.editor.desk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import counterstep.editor.analysis.Analyst;
import counterstep.export.picture.Original;
import counterstep.export.picture.ScaledPhoto;
import counterstep.model.Photo;
import counterstep.model.Procedure;
import counterstep.store.PhotoFolder;
import java.awt.Color;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PhotoStockTest {
    private static final Original LID = Original.of("lid", TestPhoto.file(Color.RED, "png"));
    private static final Photo TURNED = TestPhoto.of("p1", LID.fileName(), 1);

    @TempDir private Path folder;

    private Desk desk;

    private void onEventThread(Runnable act) throws Exception {
        SwingUtilities.invokeAndWait(
                () -> {
                    desk =
                            new Desk(
                                    Procedure.titled("lid", "Lid"),
                                    new Analyst(Runnable::run, Runnable::run));
                    act.run();
                });
    }

    @Test
    void anAddedPhotoIsThereBeforeAnyFileIs() throws Exception {
        onEventThread(
                () -> {
                    PhotoFolder before = desk.photos().folder();
                    add();
                    assertArrayEquals(LID.bytes(), bytes(desk.photos().folder()).orElseThrow());
                    assertEquals(Optional.empty(), bytes(before), "what was given out stays");
                });
    }

    @Test
    void whatIsSavedIsAtRiskNoLongerAndStillThere() throws Exception {
        Path file = folder.resolve("lid.procedure.json");
        onEventThread(
                () -> {
                    add();
                    PhotoFolder.copy(List.of(TURNED), desk.photos().folder(), file, false);
                    desk.photos().saved(List.of(TURNED), file);
                    assertEquals(Optional.empty(), bytes(desk.photos().atRisk()));
                    assertArrayEquals(LID.bytes(), bytes(desk.photos().folder()).orElseThrow());
                });
    }

    @Test
    void anotherDocumentDoesNotSeeThem() throws Exception {
        onEventThread(
                () -> {
                    add();
                    desk.opened(Procedure.titled("fan", "Fan"), Optional.empty());
                    assertEquals(Optional.empty(), bytes(desk.photos().folder()));
                });
    }

    @Test
    void aCrashLosesNoPhotoThatIsNotBesideTheFile() throws Exception {
        Path file = folder.resolve("lid.procedure.json");
        Procedure work = Procedure.titled("lid", "Lid").draft().photos(List.of(TURNED)).procedure();
        onEventThread(
                () -> {
                    desk.recovered(
                            work,
                            Optional.of(file),
                            PhotoFolder.of(name -> Optional.of(LID.bytes())));
                    assertArrayEquals(LID.bytes(), bytes(desk.photos().atRisk()).orElseThrow());
                });
    }

    @Test
    void aScaledOneArrivesLaterTurnedAndIsThereFromThenOn() throws Exception {
        CompletableFuture<ScaledPhoto> arrived = new CompletableFuture<>();
        onEventThread(
                () -> {
                    add();
                    Runnable again = () -> arrived.complete(scaled(() -> {}).orElseThrow());
                    assertFalse(scaled(again).isPresent());
                });
        ScaledPhoto photo = arrived.get(30, TimeUnit.SECONDS);
        assertEquals(60, photo.pixels().orElseThrow().getWidth());
        assertEquals(Color.RED.getRGB(), photo.pixels().orElseThrow().getRGB(57, 3));
    }

    @Test
    void aMissingOneSaysSoUntilItIsAdded() throws Exception {
        CompletableFuture<String> trouble = new CompletableFuture<>();
        CompletableFuture<Boolean> shown = new CompletableFuture<>();
        onEventThread(
                () ->
                        scaled(
                                () -> {
                                    trouble.complete(scaled(() -> {}).orElseThrow().trouble());
                                    add();
                                    scaled(() -> shown.complete(isShown()));
                                }));
        assertEquals("photo missing", trouble.get(30, TimeUnit.SECONDS));
        assertEquals(true, shown.get(30, TimeUnit.SECONDS));
    }

    private void add() {
        desk.photos().pile().add(LID.fileName(), LID.bytes());
        desk.photos().add(LID.fileName());
    }

    private boolean isShown() {
        return scaled(() -> {}).orElseThrow().pixels().isPresent();
    }

    private Optional<ScaledPhoto> scaled(Runnable ready) {
        return desk.photos().scaled(TURNED, 100, ready);
    }

    private static Optional<byte[]> bytes(PhotoFolder photos) {
        return photos.bytes(LID.fileName());
    }
}
