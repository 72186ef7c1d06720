package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.until;

import counterstep.editor.desk.Selection;
import counterstep.model.Step;
import counterstep.testing.Samples;
import java.nio.file.Path;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a photo of Details to the same photo in the Photos panel. */
final class SmallPhotoTest {
    @TempDir private Path folder;

    private StartedWindow window;

    @AfterEach
    void close() {
        window.cleanUp();
    }

    @Test
    void aClickOnASmallPhotoShowsItLarge() {
        window = StartedWindow.showing(folder, Samples.STICK_UNIT);
        Step shown =
                window.ofDesk(
                        desk ->
                                desk.state().procedure().steps().stream()
                                        .filter(step -> !step.photos().isEmpty())
                                        .findFirst()
                                        .orElseThrow());
        GuiActionRunner.execute(() -> window.workbench.select(Selection.of(shown.id())));
        window.frame.button("photo 1").click();
        until(
                "the panel shows it",
                () ->
                        !window.robot
                                .finder()
                                .findAll(each -> "photo".equals(each.getName()) && each.isShowing())
                                .isEmpty());
    }
}
