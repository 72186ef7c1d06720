package counterstep.editor.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.editor.desk.CarriedItem;
import counterstep.model.Action;
import counterstep.model.ItemId;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Verb;
import counterstep.testing.Sketch;
import java.awt.Dimension;
import java.awt.Image;
import java.awt.Point;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.TransferHandler;
import org.assertj.swing.core.MouseButton;
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
    private JFrame source;

    @AfterEach
    void close() {
        GuiActionRunner.execute(source::dispose);
        window.close();
    }

    private record Files(List<Path> paths) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.javaFileListFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return flavor.equals(DataFlavor.javaFileListFlavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) {
            return paths.stream().map(Path::toFile).toList();
        }
    }

    private JLabel label(Transferable carried) {
        JLabel label = new JLabel("a thing");
        label.setPreferredSize(new Dimension(160, 60));
        label.setTransferHandler(
                new TransferHandler() {
                    @Override
                    public int getSourceActions(JComponent component) {
                        return COPY;
                    }

                    @Override
                    protected Transferable createTransferable(JComponent component) {
                        return carried;
                    }
                });
        label.addMouseMotionListener(
                new MouseAdapter() {
                    @Override
                    public void mouseDragged(MouseEvent event) {
                        label.getTransferHandler().exportAsDrag(label, event, TransferHandler.COPY);
                    }
                });
        source = new JFrame("source");
        source.add(label);
        source.pack();
        source.setLocation(1100, 600);
        source.setAlwaysOnTop(true);
        source.setVisible(true);
        return label;
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
        JLabel label = GuiActionRunner.execute(() -> label(carried));
        until("the source is seen", () -> source.isActive());
        window.robot().pressMouse(label, new Point(80, 30), MouseButton.LEFT_BUTTON);
        window.robot().moveMouse(label, new Point(90, 36));
        window.robot().moveMouse(label, new Point(110, 50));
        window.robot().moveMouse(window.surface(), to);
        window.robot().moveMouse(window.surface(), new Point(to.x + 2, to.y + 2));
        window.robot().releaseMouse(MouseButton.LEFT_BUTTON);
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
        drop(new Files(photos), window.centre(OFF));
        until("the photos are taken", () -> !dropped.isEmpty());
        assertEquals(Map.of(OFF, photos), dropped);
    }
}
