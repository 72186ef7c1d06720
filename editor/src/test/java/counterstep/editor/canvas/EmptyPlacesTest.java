package counterstep.editor.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.testing.Sketch;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The empty place beside a step that nothing undoes, by real mouse and keys. */
final class EmptyPlacesTest {
    private static final StepId SCREWS = new StepId("s1");
    private static final StepId LID = new StepId("s2");
    private static final StepId DRAWN = new StepId("s3");

    private final GraphWindow window =
            new GraphWindow(
                    Sketch.of()
                            .screws("f1", 4)
                            .part("p1", "f1", "", "")
                            .steps("remove f1", "remove p1")
                            .procedure());

    @AfterEach
    void close() {
        window.close();
    }

    private static Point middle(Rectangle bounds) {
        return new Point((int) bounds.getCenterX(), (int) bounds.getCenterY());
    }

    private void assertDrawn(StepId off, String title) {
        Procedure procedure = window.procedure();
        Step drawn = procedure.step(DRAWN);
        assertEquals(title, drawn.title());
        assertEquals(Phase.REASSEMBLY, drawn.phase());
        assertEquals(Set.of(DRAWN), window.state().selection().steps());
        assertEquals(Optional.empty(), window.verbBeside(off));
    }

    @Test
    void aClickOnItsVerbDrawsTheCounterstepAndSelectsIt() {
        window.click(middle(window.verbBeside(LID).orElseThrow()), 1);
        assertDrawn(LID, "P1 part on");
        assertTrue(window.verbBeside(SCREWS).isPresent());
    }

    @Test
    void itIsEnteredByArrowAndDrawnByEnter() {
        window.click(window.centre(SCREWS), 1);
        window.press(KeyEvent.VK_RIGHT);
        assertEquals(Set.of(SCREWS), window.state().selection().steps());
        window.press(KeyEvent.VK_ENTER);
        assertDrawn(SCREWS, "F1 screws in");
    }

    @Test
    void theArrowBackLeavesItSoThatEnterRenamesTheStep() {
        window.click(window.centre(SCREWS), 1);
        window.press(KeyEvent.VK_RIGHT);
        window.press(KeyEvent.VK_LEFT);
        window.press(KeyEvent.VK_ENTER);
        window.type("Screws out");
        window.press(KeyEvent.VK_ENTER);
        assertEquals(
                List.of("Screws out", "remove p1"),
                window.procedure().steps().stream().map(Step::title).toList());
    }

    @Test
    void aClickBesideItsVerbDrawsNothing() {
        Rectangle verb = window.verbBeside(LID).orElseThrow();
        window.click(new Point(verb.x - verb.width, (int) verb.getMaxY()), 1);
        assertEquals(2, window.procedure().steps().size());
    }
}
