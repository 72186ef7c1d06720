package counterstep.editor.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.editor.desk.Selection;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Set;
import org.assertj.swing.core.MouseButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Steps moved and taken in a band, with the real mouse. */
final class DragTest {
    private static final StepId OFF = new StepId("s1");
    private static final StepId OUT = new StepId("s2");
    private static final StepId CLEAN = new StepId("s3");
    private static final StepId ON = new StepId("s4");

    private final GraphWindow window = new GraphWindow(pump());

    private static Procedure pump() {
        return Procedure.titled("pump", "Pump")
                .draft()
                .steps(
                        List.of(
                                Step.titled(OFF, Phase.TEARDOWN, "Lid off"),
                                Step.titled(OUT, Phase.TEARDOWN, "Rotor out"),
                                Step.titled(CLEAN, Phase.TEARDOWN, "Seat clean"),
                                Step.titled(ON, Phase.REASSEMBLY, "Lid on")))
                .procedure();
    }

    @AfterEach
    void close() {
        window.close();
    }

    @Test
    void aStepThatComesNearTheLevelOfAnotherStandsLevelWithIt() {
        Rectangle level = window.boundsOf(ON);
        Rectangle moved = window.boundsOf(OUT);
        Point grip = window.centre(OUT);
        window.drag(grip, new Point(grip.x + 40, grip.y + level.y - moved.y + 4));

        assertTrue(window.procedure().step(OUT).place().isPresent());
        assertEquals(window.boundsOf(ON).y, window.boundsOf(OUT).y);
    }

    @Test
    void aStepThatComesNearAColumnStandsInIt() {
        Point grip = window.centre(OUT);
        window.drag(grip, new Point(grip.x + 4, grip.y + 220));

        assertEquals(0, window.procedure().step(OUT).place().orElseThrow().x());
    }

    @Test
    void escapeGivesADragUp() {
        Point grip = window.centre(OUT);
        window.robot().pressMouse(window.surface(), grip, MouseButton.LEFT_BUTTON);
        window.robot().moveMouse(window.surface(), new Point(grip.x + 90, grip.y + 60));
        window.robot().pressAndReleaseKeys(KeyEvent.VK_ESCAPE);
        window.robot().moveMouse(window.surface(), new Point(grip.x + 120, grip.y + 80));
        window.robot().releaseMouse(MouseButton.LEFT_BUTTON);

        assertEquals(pump(), window.procedure());
    }

    @Test
    void aBandWithShiftAddsToWhatIsSelected() {
        window.onDesk(desk -> desk.select(Selection.of(ON)));
        Rectangle first = window.boundsOf(OFF);
        Rectangle second = window.boundsOf(OUT);
        window.robot().pressKey(KeyEvent.VK_SHIFT);
        window.drag(
                new Point((int) first.getMaxX() + 40, first.y - 12),
                new Point((int) second.getCenterX(), (int) second.getMaxY() + 4));
        window.robot().releaseKey(KeyEvent.VK_SHIFT);

        assertEquals(Set.of(OFF, OUT, ON), window.state().selection().steps());
    }

    @Test
    void theSelectionAndTheWholeAreBroughtToFit() {
        window.onDesk(desk -> desk.select(Selection.of(OUT)));
        window.onGraph(StepGraph::fitSelection);
        int near = window.boundsOf(OUT).width;
        Component overview = window.named("overview");
        window.onGraph(StepGraph::fitWhole);

        assertEquals(1.5 * Measures.WIDTH, near, 1);
        assertTrue(window.boundsOf(OUT).width <= Measures.WIDTH);
        assertFalse(overview.isShowing());
    }
}
