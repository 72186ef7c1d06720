package counterstep.editor.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.editor.analysis.Analyst;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.TestPhoto;
import counterstep.export.picture.Original;
import counterstep.model.Procedure;
import java.awt.Color;
import java.awt.Image;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

final class DeskThumbnailsTest {
    @Test
    void aPhotoComesTurnedOnceTheDrawingIsPaintedAgain() throws Exception {
        Original lid = Original.of("lid", TestPhoto.file(Color.RED, "png"));
        PhotoFace face = new PhotoFace(lid.fileName(), 1, List.of());
        CompletableFuture<Boolean> repainted = new CompletableFuture<>();
        AtomicReference<Thumbnails> thumbnails = new AtomicReference<>(Thumbnails.NONE);
        SwingUtilities.invokeAndWait(
                () -> {
                    Desk desk =
                            new Desk(
                                    Procedure.titled("lid", "Lid"),
                                    new Analyst(Runnable::run, Runnable::run));
                    desk.photos().pile().add(lid.fileName(), lid.bytes());
                    desk.photos().add(lid.fileName());
                    thumbnails.set(
                            new DeskThumbnails(desk.photos(), () -> repainted.complete(true)));
                    assertEquals(Optional.empty(), thumbnails.get().of(face, 40, 30));
                });
        assertEquals(true, repainted.get(30, TimeUnit.SECONDS));
        SwingUtilities.invokeAndWait(
                () -> {
                    Image image = thumbnails.get().of(face, 40, 30).orElseThrow();
                    assertEquals(60, image.getWidth(null));
                });
    }
}
