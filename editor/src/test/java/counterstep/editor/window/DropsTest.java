package counterstep.editor.window;

import static counterstep.editor.window.StartedWindow.on;
import static counterstep.editor.window.StartedWindow.until;
import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.editor.canvas.StepGraph;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.TestPhoto;
import counterstep.editor.testing.Carried;
import counterstep.editor.testing.OtherWindow;
import counterstep.model.Action;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.testing.Samples;
import java.awt.Color;
import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a writer drags onto the step graph, out of the panels beside it and out of other windows.
 */
final class DropsTest {
    @TempDir private Path folder;

    private StartedWindow window;
    private Procedure fan;

    @BeforeEach
    void open() {
        window = StartedWindow.showing(folder, Samples.SUPPLY_FAN);
        fan = procedure();
    }

    @AfterEach
    void close() {
        window.cleanUp();
    }

    private Procedure procedure() {
        return window.ofDesk(desk -> desk.state().procedure());
    }

    private Component surface() {
        return window.robot.finder().findByName("step graph", true);
    }

    private Point middle(StepId step) {
        Rectangle box =
                on(
                        () ->
                                window.robot
                                        .finder()
                                        .findByType(StepGraph.class)
                                        .boundsOf(step)
                                        .orElseThrow());
        return new Point((int) box.getCenterX(), (int) box.getCenterY());
    }

    /** Between the two columns, where nothing stands. */
    private Point ground() {
        Point off = middle(first(Phase.TEARDOWN));
        Point on = middle(first(Phase.REASSEMBLY));
        return new Point((off.x + on.x) / 2, off.y);
    }

    private StepId first(Phase phase) {
        return fan.steps().stream()
                .filter(step -> step.phase() == phase)
                .findFirst()
                .orElseThrow()
                .id();
    }

    private void drag(String list, String line, Point to) {
        JList<?> lines = window.frame.list(list).target();
        Point at =
                on(
                        () -> {
                            for (int each = 0; each < lines.getModel().getSize(); each++) {
                                if (lines.getModel()
                                        .getElementAt(each)
                                        .toString()
                                        .startsWith(line)) {
                                    lines.ensureIndexIsVisible(each);
                                    Rectangle cell = lines.getCellBounds(each, each);
                                    return new Point(cell.x + 40, (int) cell.getCenterY());
                                }
                            }
                            throw new AssertionError("no " + line);
                        });
        OtherWindow.drag(window.robot, lines, at, surface(), to);
    }

    private void showBlocks() {
        window.control(KeyEvent.VK_4);
        until(
                "the blocks are there",
                () -> on(() -> window.frame.list("blocks").target().isShowing()));
    }

    private List<String> titles(Procedure of) {
        return of.steps().stream().map(Step::title).toList();
    }

    @Test
    void aBlockOnAStepIsPutInBelowItAndUndoneAsOne() {
        showBlocks();
        drag("blocks", "Static precautions", middle(fan.steps().get(1).id()));
        until("it is put in", () -> procedure().steps().size() > fan.steps().size());
        assertEquals("Strap on, mat grounded", procedure().steps().get(2).title());
        assertEquals(
                List.of(procedure().steps().get(2).id()),
                List.copyOf(window.ofDesk(desk -> desk.state().selection().steps())));
        assertEquals(Optional.of("Put in: Static precautions"), window.ofDesk(Desk::undoName));
        window.control(KeyEvent.VK_Z);
        until("it is undone", () -> procedure().equals(fan));
    }

    @Test
    void aBlockOnTheGroundGoesToTheEndOfItsPhase() {
        showBlocks();
        drag("blocks", "Protective-earth test", ground());
        until("it is put in", () -> procedure().steps().size() > fan.steps().size());
        List<String> wanted = new ArrayList<>(titles(fan));
        wanted.add("Test the protective earth");
        assertEquals(wanted, titles(procedure()));
    }

    @Test
    void anItemOutOfTheRegisterBecomesAnActionOfTheStep() {
        StepId step = fan.steps().get(1).id();
        drag("items", "fan lead", middle(step));
        until("it is acted on", () -> procedure().step(step).actions().size() == 2);
        Action action = procedure().step(step).actions().get(1);
        assertEquals("fan lead", procedure().item(action.item().orElseThrow()).name());
    }

    @Test
    void aPhotoOutOfAnotherWindowIsAddedToTheStep() throws IOException {
        StepId step = fan.steps().get(1).id();
        Path photo = Files.write(folder.resolve("mat.png"), TestPhoto.file(Color.RED, "png"));
        try (OtherWindow files = OtherWindow.with(window.robot, Carried.files(photo))) {
            files.drop(surface(), middle(step));
            until("the photo is there", () -> procedure().step(step).photos().size() == 1);
        }
        assertEquals(fan.photos().size() + 1, procedure().photos().size());
    }
}
