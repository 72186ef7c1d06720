package counterstep.editor.photos;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.editor.clipboard.PhotoIntake;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.Selection;
import counterstep.editor.desk.TestPhoto;
import counterstep.editor.details.PanelWindow;
import counterstep.editor.testing.Carried;
import counterstep.editor.testing.Choice;
import counterstep.model.Action;
import counterstep.model.Callout;
import counterstep.model.CalloutShape;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Phase;
import counterstep.model.Photo;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.StepPhoto;
import counterstep.model.Verb;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.datatransfer.Transferable;
import java.awt.event.KeyEvent;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.TransferHandler;
import org.assertj.swing.core.MouseButton;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PhotosPanelTest {
    private static final StepId FIRST = new StepId("s1");
    private static final StepId SECOND = new StepId("s2");
    private static final ItemId LID = new ItemId("p4");

    @TempDir private Path folder;

    private final List<String> refusals = new ArrayList<>();
    private PhotosPanel panel;
    private PanelWindow window;

    private static Procedure pump() {
        return Procedure.titled("pump", "Pump")
                .draft()
                .items(List.of(Part.named(LID, "lid")))
                .steps(
                        List.of(
                                step(FIRST, "Lid off", Verb.REMOVE),
                                step(SECOND, "Lid on", Verb.REINSTALL)))
                .procedure();
    }

    private static Step step(StepId id, String title, Verb verb) {
        return Step.titled(id, Phase.TEARDOWN, title)
                .draft()
                .actions(List.of(Action.of(verb, LID, 1)))
                .step();
    }

    @BeforeEach
    void open() {
        window =
                new PanelWindow(
                        pump(),
                        desk -> {
                            panel = new PhotosPanel(desk, new PhotoIntake(desk, refusals::add));
                            return panel;
                        });
        window.frame().resizeTo(new Dimension(1100, 420));
        window.onDesk(desk -> desk.select(Selection.of(FIRST)));
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

    private List<StepPhoto> photos(StepId step) {
        return window.procedure().step(step).photos();
    }

    private List<Callout> callouts() {
        return photos(FIRST).get(0).callouts();
    }

    private void drop(Path... files) {
        Transferable carried = Carried.files(files);
        GuiActionRunner.execute(
                () -> {
                    TransferHandler handler = panel.component().getTransferHandler();
                    handler.importData(
                            new TransferHandler.TransferSupport(panel.component(), carried));
                });
    }

    private Path file(String name) throws IOException {
        Path file = folder.resolve(name);
        Files.write(file, TestPhoto.file(Color.RED, "png"));
        return file;
    }

    private PhotoView view() {
        return window.frame().robot().finder().findByType(PhotoView.class);
    }

    private void dropOne() throws IOException {
        drop(file("lid.png"));
        until("the photo is there", () -> photos(FIRST).size() == 1);
        until("it is read", () -> GuiActionRunner.execute(() -> view().place()).isPresent());
    }

    private Point at(double x, double y) {
        Rectangle2D place = GuiActionRunner.execute(() -> view().place()).orElseThrow();
        return new Point(
                (int) Math.round(place.getX() + x * place.getWidth()),
                (int) Math.round(place.getY() + y * place.getHeight()));
    }

    private void drag(double x, double y, double toX, double toY) {
        var robot = window.frame().robot();
        robot.pressMouse(view(), at(x, y), MouseButton.LEFT_BUTTON);
        robot.moveMouse(view(), at((x + toX) / 2, (y + toY) / 2));
        robot.moveMouse(view(), at(toX, toY));
        robot.releaseMouse(MouseButton.LEFT_BUTTON);
        robot.waitForIdle();
    }

    @Test
    void aDroppedPhotoIsAddedToTheStepAndUndone() throws IOException {
        dropOne();
        Photo photo = window.procedure().photos().get(0);
        assertTrue(photo.file().endsWith(".png"), photo.file());
        window.onDesk(
                desk ->
                        assertEquals(
                                Optional.of(TestPhoto.file(Color.RED, "png").length),
                                desk.photos().folder().bytes(photo.file()).map(all -> all.length),
                                "the original, byte for byte"));
        window.onDesk(Desk::undo);
        assertEquals(pump(), window.procedure());
    }

    @Test
    void whatIsNoPhotoIsRefusedInASentence() throws IOException {
        Path file = folder.resolve("lid.png");
        Files.writeString(file, "no photo");
        drop(file);
        until("it is refused", () -> !refusals.isEmpty());
        assertTrue(refusals.get(0).contains("lid.png"), refusals.get(0));
        assertEquals(pump(), window.procedure());
    }

    @Test
    void aCalloutIsPlacedMovedTiedAndDeletedByMouseAndKeys() throws IOException {
        dropOne();
        window.frame().robot().click(view(), at(0.5, 0.5));
        until("it is placed", () -> callouts().size() == 1);
        assertEquals(CalloutShape.POINT, callouts().get(0).shape());
        assertEquals(0.5, callouts().get(0).x(), 0.02);
        drag(0.5, 0.5, 0.25, 0.75);
        until("it is moved", () -> callouts().get(0).x() < 0.4);
        assertEquals(0.75, callouts().get(0).y(), 0.03);
        assertEquals(Optional.of(LID), callouts().get(0).item(), "the only thing there is");
        Choice.of(window.frame(), "photo.item").take("nothing");
        until("it is loose", () -> callouts().get(0).item().isEmpty());
        Choice.of(window.frame(), "photo.item").take("lid");
        until("it is tied", () -> callouts().get(0).item().equals(Optional.of(LID)));
        Choice.of(window.frame(), "photo.shape").take("arrow");
        drag(0.6, 0.2, 0.8, 0.4);
        until("an arrow is there", () -> callouts().size() == 2);
        assertEquals(CalloutShape.ARROW, callouts().get(1).shape());
        assertEquals(0.8, callouts().get(1).toX(), 0.02);
        window.frame().robot().pressAndReleaseKeys(KeyEvent.VK_DELETE);
        until("it is deleted", () -> callouts().size() == 1);
        double before = callouts().get(0).x();
        window.frame().robot().pressAndReleaseKeys(KeyEvent.VK_ENTER, KeyEvent.VK_RIGHT);
        until("it is nudged", () -> callouts().get(0).x() > before);
        window.onDesk(Desk::undo);
        assertEquals(before, callouts().get(0).x());
    }

    @Test
    void aPhotoIsDescribedTurnedAndShownInAnotherStepToo() throws IOException {
        dropOne();
        window.frame().textBox("photo.seen-from").focus().enterText("the back");
        window.frame().textBox("photo.seen-from").pressAndReleaseKeys(KeyEvent.VK_ENTER);
        until(
                "it is described",
                () -> window.procedure().photos().get(0).seenFrom().equals("the back"));
        window.frame().list("still to be photographed").clickItem("2  Lid on");
        window.frame().label("photos empty").requireText("No photo of this step.*");
        window.onDesk(desk -> desk.select(Selection.of(FIRST)));
        assertEquals(1, window.frame().list("still to be photographed").contents().length);
    }

    @Test
    void aListThatIsOpenedStaysOpenWhenWhatWasTypedIsHandedIn() throws IOException {
        dropOne();
        window.frame().textBox("photo.seen-from").focus().enterText("the back");
        Choice points = Choice.of(window.frame(), "photo.item");
        window.frame().robot().click(view(), at(0.5, 0.5));
        until("it is placed", () -> callouts().size() == 1);
        window.frame().textBox("photo.seen-from").focus().enterText(", above");
        points.open();
        until(
                "it is described",
                () -> window.procedure().photos().get(0).seenFrom().equals("the back, above"));
        assertTrue(points.isOpen());
        points.take("nothing");
        until("it is loose", () -> callouts().get(0).item().isEmpty());
    }

    @Test
    void wordsStillBeingTypedGoToThePhotoTheyWereTypedFor() throws IOException {
        dropOne();
        window.frame().textBox("photo.seen-from").focus().enterText("the back");
        window.onDesk(desk -> desk.select(Selection.of(SECOND)));
        assertEquals("the back", window.procedure().photos().get(0).seenFrom());
    }

    @Test
    void aCopiedImageIsPasted() {
        Transferable copied = Carried.image(TestPhoto.pixels(Color.BLUE));
        GuiActionRunner.execute(
                () ->
                        panel.component()
                                .getToolkit()
                                .getSystemClipboard()
                                .setContents(copied, null));
        window.frame().list("still to be photographed").focus();
        window.frame().robot().pressKey(KeyEvent.VK_CONTROL);
        window.frame().robot().pressAndReleaseKeys(KeyEvent.VK_V);
        window.frame().robot().releaseKey(KeyEvent.VK_CONTROL);
        until("the photo is there", () -> photos(FIRST).size() == 1);
    }
}
