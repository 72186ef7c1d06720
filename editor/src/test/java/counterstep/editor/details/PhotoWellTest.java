package counterstep.editor.details;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.edit.ChangePhoto;
import counterstep.editor.clipboard.PhotoIntake;
import counterstep.editor.desk.Selection;
import counterstep.editor.desk.TestPhoto;
import counterstep.editor.testing.Carried;
import counterstep.editor.testing.OtherWindow;
import counterstep.model.Phase;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.Color;
import java.awt.Component;
import java.awt.Point;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The photos of a step in Details. */
final class PhotoWellTest {
    private static final StepId OFF = new StepId("s1");

    @TempDir private Path folder;

    private final List<PhotoId> asked = new ArrayList<>();
    private PanelWindow window;

    @BeforeEach
    void open() {
        Procedure pump =
                Procedure.titled("pump", "Pump")
                        .draft()
                        .steps(List.of(Step.titled(OFF, Phase.TEARDOWN, "Lid off")))
                        .procedure();
        window =
                new PanelWindow(
                        pump,
                        desk -> {
                            DetailsPanel panel =
                                    new DetailsPanel(desk, new PhotoIntake(desk, said -> {}));
                            panel.onPhoto(asked::add);
                            return panel;
                        });
        window.onDesk(desk -> desk.select(Selection.of(OFF)));
    }

    @AfterEach
    void close() {
        window.close();
    }

    private static void until(String what, Supplier<Boolean> holds) {
        Pause.pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return holds.get();
                    }
                });
    }

    private List<Photo> photos() {
        return window.procedure().photos();
    }

    private void copy(Color corner) {
        Toolkit.getDefaultToolkit()
                .getSystemClipboard()
                .setContents(Carried.image(TestPhoto.pixels(corner)), null);
    }

    private void paste() {
        window.frame().robot().pressKey(KeyEvent.VK_CONTROL);
        window.frame().robot().pressAndReleaseKeys(KeyEvent.VK_V);
        window.frame().robot().releaseKey(KeyEvent.VK_CONTROL);
    }

    @Test
    void anEmptyWellSaysHowToAddAndTakesWhatIsPastedThere() {
        copy(Color.RED);
        window.frame().label("step.photos").requireText("None yet: drop one.*").click();
        until(
                "it has the focus",
                () -> window.frame().label("step.photos").target().isFocusOwner());
        paste();
        until("the photo is there", () -> photos().size() == 1);
        assertEquals("1", window.frame().button("photo 1").text());
        window.frame().button("photo 1").focus();
        copy(Color.BLUE);
        paste();
        until("the second is there", () -> photos().size() == 2);
    }

    @Test
    void aFileIsDroppedIntoTheWellAndAskedForLarge() throws IOException {
        Path file = Files.write(folder.resolve("lid.png"), TestPhoto.file(Color.RED, "png"));
        Component well = window.frame().label("step.photos").target();
        try (OtherWindow files = OtherWindow.with(window.frame().robot(), Carried.files(file))) {
            files.drop(well, new Point(40, 10));
            until("the photo is there", () -> photos().size() == 1);
        }
        Photo photo = photos().get(0);
        Photo described =
                new Photo(
                        photo.id(),
                        photo.file(),
                        photo.alternative(),
                        "the back",
                        photo.quarterTurns(),
                        photo.extras());
        window.onDesk(desk -> desk.apply(new ChangePhoto(described, "Describe photo")));
        until("it says so", () -> window.frame().button("photo 1").text().equals("1  the back"));
        window.frame().button("photo 1").click();
        until("it is asked for", () -> asked.equals(List.of(photo.id())));
    }
}
