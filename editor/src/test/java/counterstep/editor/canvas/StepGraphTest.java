package counterstep.editor.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.editor.desk.Desk;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Set;
import org.assertj.swing.core.MouseButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Real mouse and keys on the graph; what counts is the document on the desk. */
final class StepGraphTest {
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
                .links(List.of(Link.drawn(OFF, CLEAN)))
                .procedure();
    }

    @AfterEach
    void close() {
        window.close();
    }

    private List<String> titles() {
        return window.procedure().steps().stream().map(Step::title).toList();
    }

    private List<LinkEnds> links() {
        return window.procedure().links().stream().map(Link::ends).toList();
    }

    private static Point below(Rectangle bounds, int pixels) {
        return new Point((int) bounds.getCenterX(), (int) bounds.getMaxY() + pixels);
    }

    @Test
    void aDoubleClickOnTheGroundAddsAStepBelowAndTakesItsTitle() {
        window.click(below(window.boundsOf(CLEAN), 50), 2);
        window.type("Seal out");
        window.press(KeyEvent.VK_ENTER);

        assertEquals(List.of("Lid off", "Rotor out", "Seat clean", "Seal out", "Lid on"), titles());
        assertEquals(Phase.TEARDOWN, window.procedure().steps().get(3).phase());
        assertEquals(pump().links(), window.procedure().links(), "it is placed, not told");
    }

    @Test
    void aStepIsRenamedInPlaceAndEscapeKeepsTheOldTitle() {
        window.click(window.centre(OUT), 1);
        window.press(KeyEvent.VK_F2);
        window.type("Rotor up and out");
        window.press(KeyEvent.VK_ENTER);
        window.press(KeyEvent.VK_F2);
        window.type("no");
        window.press(KeyEvent.VK_ESCAPE);

        assertEquals(List.of("Lid off", "Rotor up and out", "Seat clean", "Lid on"), titles());
    }

    @Test
    void aDragFromTheEdgeOfAStepToAnotherLinksThemOnce() {
        linkByDragging(OUT, ON);
        linkByDragging(OUT, ON);

        assertEquals(List.of(new LinkEnds(OFF, CLEAN), new LinkEnds(OUT, ON)), links());
    }

    private void linkByDragging(StepId from, StepId to) {
        Rectangle bounds = window.boundsOf(from);
        window.robot().moveMouse(window.surface(), window.centre(from));
        window.robot().waitForIdle();
        window.drag(
                new Point((int) bounds.getMaxX() - 4, (int) bounds.getCenterY()),
                window.centre(to));
    }

    @Test
    void aDraggedStepStaysWhereItIsPutInOneUndo() {
        Rectangle before = window.boundsOf(OUT);
        Rectangle fixed = window.boundsOf(ON);
        Point grip = window.centre(OUT);
        window.drag(grip, new Point(grip.x + 60, grip.y + 40));

        int moved = window.boundsOf(OUT).x - window.boundsOf(ON).x;
        assertEquals(before.x - fixed.x + 60, moved, 2);
        assertTrue(window.procedure().step(OUT).place().isPresent());
        window.onDesk(Desk::undo);
        assertEquals(pump(), window.procedure());
        assertEquals(before.x - fixed.x, window.boundsOf(OUT).x - window.boundsOf(ON).x);
    }

    @Test
    void stepsInABandAreSelectedAndDeletedWithTheirLinks() {
        Rectangle first = window.boundsOf(OFF);
        window.drag(
                new Point((int) first.getMaxX() + 40, first.y - 12),
                below(window.boundsOf(OUT), 4));
        assertEquals(Set.of(OFF, OUT), window.state().selection().steps());

        window.press(KeyEvent.VK_DELETE);

        assertEquals(List.of("Seat clean", "Lid on"), titles());
        assertEquals(List.of(), links());
    }

    @Test
    void aLinkIsSelectedByAClickOnItAndDeleted() {
        Rectangle passed = window.boundsOf(OUT);
        double scale = passed.width / Measures.WIDTH;
        window.click(new Point((int) (passed.x - 18 * scale), (int) passed.getCenterY()), 1);
        assertEquals(Set.of(new LinkEnds(OFF, CLEAN)), window.state().selection().links());

        window.press(KeyEvent.VK_DELETE);

        assertEquals(List.of(), links());
        assertEquals(4, window.procedure().steps().size());
    }

    @Test
    void arrowsGoFromStepToStepAndControlAddsToTheSelection() {
        window.click(window.centre(OFF), 1);
        window.press(KeyEvent.VK_DOWN);
        assertEquals(Set.of(OUT), window.state().selection().steps());

        window.robot().pressKey(KeyEvent.VK_CONTROL);
        window.robot().click(window.surface(), window.centre(ON), MouseButton.LEFT_BUTTON, 1);
        window.robot().releaseKey(KeyEvent.VK_CONTROL);

        assertEquals(Set.of(OUT, ON), window.state().selection().steps());
    }
}
