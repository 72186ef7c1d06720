package counterstep.editor.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.edit.RenameStep;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.Selection;
import counterstep.model.CanvasPoint;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.assertj.swing.core.MouseButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Phases folded to one card and unfolded, with real mouse and keys. */
final class FoldTest {
    private static final StepId OFF = new StepId("s1");
    private static final StepId OUT = new StepId("s2");
    private static final StepId CLEAN = new StepId("s3");
    private static final StepId IN = new StepId("s4");
    private static final StepId ON = new StepId("s5");
    private static final LinkEnds OFF_OUT = new LinkEnds(OFF, OUT);
    private static final LinkEnds OFF_CLEAN = new LinkEnds(OFF, CLEAN);
    private static final LinkEnds OUT_CLEAN = new LinkEnds(OUT, CLEAN);

    private final GraphWindow window = new GraphWindow(pump());

    private static Procedure pump() {
        return Procedure.titled("pump", "Pump")
                .draft()
                .steps(
                        List.of(
                                Step.titled(OFF, Phase.TEARDOWN, "Lid off"),
                                Step.titled(OUT, Phase.TEARDOWN, "Rotor out"),
                                Step.titled(CLEAN, Phase.SERVICE, "Seat clean"),
                                Step.titled(IN, Phase.REASSEMBLY, "Rotor in"),
                                Step.titled(ON, Phase.REASSEMBLY, "Lid on")))
                .links(
                        List.of(
                                Link.drawn(OFF, OUT),
                                Link.drawn(OFF, CLEAN),
                                Link.drawn(OUT, CLEAN)))
                .procedure();
    }

    @AfterEach
    void close() {
        window.close();
    }

    private Point head(Phase phase) {
        Rectangle handle = window.ofGraph(graph -> graph.handle(phase));
        return new Point(handle.x + 12, (int) handle.getCenterY());
    }

    private void clickHead(Phase phase) {
        Component heads = window.named("column heads");
        window.robot().click(heads, head(phase), MouseButton.LEFT_BUTTON, 1);
        window.until(
                phase + " is folded or unfolded", () -> window.folded(phase).isPresent() != folded);
        folded = !folded;
    }

    private boolean folded;

    private Point card(Phase phase) {
        Rectangle bounds = window.folded(phase).orElseThrow();
        return new Point((int) bounds.getCenterX(), (int) bounds.getCenterY());
    }

    @Test
    void aPhaseIsFoldedAtItsNameAndUnfoldedByAClickOnItsCard() {
        Rectangle off = window.boundsOf(OFF);
        Rectangle clean = window.boundsOf(CLEAN);
        clickHead(Phase.TEARDOWN);

        assertEquals(off, window.folded(Phase.TEARDOWN).orElseThrow());
        assertEquals(Set.of(CLEAN, IN, ON), window.drawn());
        assertTrue(window.boundsOf(CLEAN).y < clean.y, "the empty row is left out");

        window.click(card(Phase.TEARDOWN), 2);

        assertEquals(Set.of(OFF, OUT, CLEAN, IN, ON), window.drawn());
        assertEquals(clean, window.boundsOf(CLEAN));
        assertEquals(pump(), window.procedure());
    }

    @Test
    void anyPhaseIsFoldedByTheMenuOfTheSecondButton() {
        window.robot().click(window.surface(), window.centre(CLEAN), MouseButton.RIGHT_BUTTON, 1);
        window.robot().click(window.named("Fold Service"));
        window.until("service is folded", () -> window.folded(Phase.SERVICE).isPresent());

        window.robot().click(window.surface(), card(Phase.SERVICE), MouseButton.RIGHT_BUTTON, 1);
        window.robot().click(window.named("Unfold all phases"));
        window.until("nothing is folded", () -> window.drawn().size() == 5);
    }

    @Test
    void aStepSelectedElsewhereUnfoldsItsPhaseAndAnEditInsideDoesNot() {
        window.onDesk(desk -> desk.select(Selection.of(OUT)));
        window.onGraph(StepGraph::foldSelected);
        window.onDesk(desk -> desk.apply(new RenameStep(OUT, "Rotor up")));
        window.onDesk(Desk::undo);
        assertTrue(window.folded(Phase.TEARDOWN).isPresent());

        window.onDesk(desk -> desk.select(Selection.of(OFF)));

        assertFalse(window.folded(Phase.TEARDOWN).isPresent());
        assertEquals(Set.of(OFF), window.state().selection().steps());
    }

    @Test
    void arrowsGoToAFoldedPhaseAndEnterUnfoldsIt() {
        window.onGraph(StepGraph::foldAll);
        window.click(new Point(2, 2), 1);
        window.press(KeyEvent.VK_DOWN);
        assertEquals(Set.of(OFF, OUT), window.state().selection().steps());
        window.press(KeyEvent.VK_DOWN);
        assertEquals(Set.of(CLEAN), window.state().selection().steps());
        window.press(KeyEvent.VK_ENTER);

        assertEquals(Set.of(CLEAN), window.drawn());
    }

    @Test
    void aDragMovesAllStepsOfAFoldedPhaseInOneUndo() {
        window.onDesk(desk -> desk.select(Selection.of(OFF)));
        window.onGraph(StepGraph::foldSelected);
        Rectangle before = window.folded(Phase.TEARDOWN).orElseThrow();
        Rectangle fixed = window.boundsOf(ON);
        Point grip = card(Phase.TEARDOWN);
        window.drag(grip, new Point(grip.x + 61, grip.y + 33));

        Rectangle after = window.folded(Phase.TEARDOWN).orElseThrow();
        assertEquals(before.x - fixed.x + 61, after.x - window.boundsOf(ON).x, 2);
        CanvasPoint off = window.procedure().step(OFF).place().orElseThrow();
        CanvasPoint out = window.procedure().step(OUT).place().orElseThrow();
        assertEquals(off.x(), out.x());
        assertEquals(Measures.ROW, out.y() - off.y());
        window.onDesk(Desk::undo);
        assertEquals(pump(), window.procedure());
        assertEquals(before, window.folded(Phase.TEARDOWN).orElseThrow());
    }

    @Test
    void aBandTakesAllStepsOfAFoldedPhase() {
        window.onGraph(StepGraph::foldAll);
        Rectangle card = window.folded(Phase.TEARDOWN).orElseThrow();
        window.drag(
                new Point((int) card.getMaxX() + 20, card.y - 8),
                new Point((int) card.getCenterX(), (int) card.getCenterY()));
        assertEquals(Set.of(OFF, OUT), window.state().selection().steps());
        assertTrue(window.folded(Phase.TEARDOWN).isPresent());

        window.press(KeyEvent.VK_DELETE);

        assertEquals(Optional.empty(), window.folded(Phase.TEARDOWN));
        assertEquals(3, window.procedure().steps().size());
    }

    @Test
    void aLinkOfAFoldedPhaseStandsForAllThatItReplaces() {
        window.onDesk(desk -> desk.select(Selection.of(OFF)));
        window.onGraph(StepGraph::foldSelected);
        Rectangle card = window.folded(Phase.TEARDOWN).orElseThrow();
        Rectangle below = window.boundsOf(CLEAN);
        assertEquals(1, window.<Integer>ofGraph(StepGraph::routes));
        int middle = (int) ((card.getMaxY() + below.y) / 2);
        window.click(new Point((int) card.getCenterX(), middle + 1), 1);

        assertEquals(Set.of(OFF_CLEAN, OUT_CLEAN), window.state().selection().links());
        window.press(KeyEvent.VK_DELETE);
        assertEquals(
                List.of(OFF_OUT), window.procedure().links().stream().map(Link::ends).toList());
    }

    @Test
    void aStepAddedBelowAFoldedPhaseFollowsItsLastStepAndUnfoldsIt() {
        window.onDesk(desk -> desk.select(Selection.of(CLEAN)));
        window.onGraph(StepGraph::foldAll);
        window.onGraph(StepGraph::foldAll);
        window.onDesk(desk -> desk.select(Selection.of(OFF)));
        window.onGraph(StepGraph::foldSelected);
        Rectangle card = window.folded(Phase.TEARDOWN).orElseThrow();
        window.click(new Point(card.x - 8, (int) card.getMaxY() + 2), 2);
        window.type("Seal out");
        window.press(KeyEvent.VK_ENTER);

        assertEquals("Seal out", window.procedure().steps().get(2).title());
        assertEquals(Phase.TEARDOWN, window.procedure().steps().get(2).phase());
        assertEquals(6, window.drawn().size());
    }
}
