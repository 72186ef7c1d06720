package counterstep.editor.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.editor.desk.CarriedItem;
import counterstep.editor.testing.Carried;
import counterstep.editor.testing.OtherWindow;
import counterstep.model.Action;
import counterstep.model.ItemId;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Verb;
import counterstep.testing.Sketch;
import java.awt.Image;
import java.awt.Point;
import java.awt.datatransfer.Transferable;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import org.assertj.swing.edt.GuiActionRunner;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Things dropped onto the drawing by real drags from another window. */
final class DropTest {
    private static final StepId OFF = new StepId("s1");
    private static final StepId LATER = new StepId("s2");
    private static final ItemId SCREWS = new ItemId("f1");

    private final GraphWindow window =
            new GraphWindow(Sketch.of().screws("f1", 4).steps("remove f1", "check").procedure());
    private final Map<StepId, List<Path>> dropped = new ConcurrentHashMap<>();
    private OtherWindow source;

    @AfterEach
    void close() {
        source.close();
        window.close();
    }

    private static void until(String what, BooleanSupplier holds) {
        Pause.pause(
                new Condition(what) {
                    @Override
                    public boolean test() {
                        return GuiActionRunner.execute(() -> holds.getAsBoolean());
                    }
                });
    }

    private void drop(Transferable carried, Point to) {
        source = OtherWindow.with(window.robot(), carried);
        source.drop(window.surface(), to);
    }

    private List<Action> actions(StepId step) {
        return window.procedure().step(step).actions();
    }

    @Test
    void anItemThatIsOutIsPutBackByTheStepItIsDroppedOn() {
        drop(new CarriedItem(SCREWS), window.centre(LATER));
        until("the action is there", () -> window.procedureNow().step(LATER).actions().size() > 1);
        assertEquals(Action.of(Verb.REINSTALL, SCREWS, 4), actions(LATER).get(1));
        assertEquals(Set.of(LATER), window.state().selection().steps());
    }

    @Test
    void anItemOnTheGroundBecomesAStepNamedAfterIt() {
        Point first = window.centre(OFF);
        Point second = window.centre(LATER);
        drop(new CarriedItem(SCREWS), new Point(second.x, 2 * second.y - first.y + 60));
        until("the step is there", () -> window.procedureNow().steps().size() == 3);
        Procedure after = window.procedure();
        Step added = after.steps().get(2);
        assertEquals(Verb.REINSTALL, added.actions().get(0).verb());
        assertEquals("Reinstall " + after.item(SCREWS).name(), added.title());
        assertEquals(Phase.TEARDOWN, added.phase());
    }

    @Test
    void photosGoToTheStepTheyAreDroppedOn() {
        window.onGraph(
                graph ->
                        graph.onPhotos(
                                new PhotoDrop() {
                                    @Override
                                    public void files(StepId step, List<Path> photos) {
                                        dropped.put(step, photos);
                                    }

                                    @Override
                                    public void image(StepId step, Image photo) {
                                        dropped.put(step, List.of());
                                    }
                                }));
        List<Path> photos = List.of(Path.of("/no/such/lid.JPG"), Path.of("/no/such/screws.png"));
        drop(Carried.files(photos), window.centre(OFF));
        until("the photos are taken", () -> !dropped.isEmpty());
        assertEquals(Map.of(OFF, photos), dropped);
    }
}
