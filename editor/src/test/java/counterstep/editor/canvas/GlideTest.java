package counterstep.editor.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.edit.AddStep;
import counterstep.edit.PlaceSteps;
import counterstep.edit.RenameStep;
import counterstep.editor.desk.Desk;
import counterstep.editor.theme.Palette;
import counterstep.model.CanvasPoint;
import counterstep.model.Link;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** How steps glide to their places, at a time that the test sets. */
final class GlideTest {
    private static final StepId OFF = new StepId("s1");
    private static final StepId OUT = new StepId("s2");
    private static final StepId CLEAN = new StepId("s3");
    private static final StepId ON = new StepId("s4");
    private static final StepId FRESH = new StepId("s9");

    private final AtomicLong time = new AtomicLong();
    private final GraphWindow window = new GraphWindow(pump(), time::get);

    private static Procedure pump() {
        return Procedure.titled("pump", "Pump")
                .draft()
                .steps(
                        List.of(
                                Step.titled(OFF, Phase.TEARDOWN, "Lid off"),
                                Step.titled(OUT, Phase.TEARDOWN, "Rotor out"),
                                Step.titled(CLEAN, Phase.TEARDOWN, "Seat clean"),
                                Step.titled(ON, Phase.REASSEMBLY, "Lid on")))
                .links(List.of(Link.drawn(OFF, OUT), Link.drawn(OUT, CLEAN)))
                .procedure();
    }

    @AfterEach
    void close() {
        window.close();
    }

    private Rectangle seen(StepId step) {
        return window.ofGraph(graph -> graph.seenAt(step).orElseThrow());
    }

    private boolean gliding() {
        return window.ofGraph(StepGraph::isGliding);
    }

    private void pass(double share) {
        time.addAndGet((long) (share * Glide.LASTS));
    }

    private void addAfterTheFirst() {
        Step fresh = Step.titled(FRESH, Phase.TEARDOWN, "Seal out");
        window.onDesk(desk -> desk.apply(new AddStep(fresh, Optional.of(OFF), Optional.empty())));
    }

    @Test
    void stepsBelowANewOneGlideToTheirPlacesAndStandThere() {
        Rectangle before = window.boundsOf(CLEAN);
        Rectangle first = window.boundsOf(OFF);
        addAfterTheFirst();
        Rectangle after = window.boundsOf(CLEAN);

        assertTrue(after.y > before.y);
        assertEquals(before, seen(CLEAN));
        assertEquals(first, seen(OFF));
        pass(0.3);
        window.until("on its way", () -> seen(CLEAN).y > before.y);
        assertTrue(seen(CLEAN).y < after.y);
        pass(0.7);
        window.until("there", () -> !gliding());
        assertEquals(after, seen(CLEAN));
    }

    @Test
    void anotherChangeOnTheWayGoesOnFromWhereStepsAreSeen() {
        Rectangle before = window.boundsOf(CLEAN);
        addAfterTheFirst();
        pass(0.3);
        window.until("on its way", () -> seen(CLEAN).y > before.y);
        Rectangle onTheWay = seen(CLEAN);

        window.onDesk(Desk::undo);

        assertEquals(onTheWay, seen(CLEAN));
        pass(1);
        window.until("back", () -> !gliding());
        assertEquals(before, seen(CLEAN));
    }

    @Test
    void aChangeThatMovesNothingNeitherBeginsNorEndsAGlide() {
        window.onDesk(desk -> desk.apply(new RenameStep(OUT, "Rotor up")));
        assertFalse(gliding());

        addAfterTheFirst();
        pass(0.3);
        window.onDesk(desk -> desk.apply(new RenameStep(OUT, "Rotor out")));

        assertTrue(gliding());
        pass(0.7);
        window.until("there", () -> !gliding());
    }

    @Test
    void withLessMotionStepsStandInTheirPlacesAtOnce() {
        window.onGraph(graph -> graph.lessMotion(true));
        addAfterTheFirst();
        assertFalse(gliding());
        assertEquals(window.boundsOf(CLEAN), seen(CLEAN));

        window.onGraph(graph -> graph.lessMotion(false));
        window.onDesk(Desk::undo);
        assertTrue(gliding());

        window.onGraph(graph -> graph.lessMotion(true));
        assertFalse(gliding());
    }

    @Test
    void aStepThatWasDraggedStaysWhereThePointerLeftIt() {
        Point grip = window.centre(CLEAN);
        window.drag(grip, new Point(grip.x + 70, grip.y + 60));

        assertTrue(window.procedure().step(CLEAN).place().isPresent());
        assertFalse(gliding());
        window.onDesk(Desk::undo);
        assertTrue(gliding());
    }

    @Test
    void aGlidingStepIsPaintedWhereItIsSeenAndAPointerFindsItWhereItGoes() {
        Rectangle before = window.boundsOf(ON);
        Map<StepId, Optional<CanvasPoint>> away =
                Map.of(ON, Optional.of(new CanvasPoint(Measures.RIGHT_COLUMN, 2000)));
        window.onDesk(desk -> desk.apply(new PlaceSteps(away)));

        assertNotEquals(Palette.CANVAS.color().getRGB(), painted(before));
        assertTrue(window.boundsOf(ON).y > window.surface().getParent().getHeight());
        pass(1);
        window.until("gone", () -> !gliding());
        assertEquals(Palette.CANVAS.color().getRGB(), painted(before));

        window.onDesk(Desk::undo);
        window.click(window.centre(ON), 1);
        assertTrue(gliding());
        assertEquals(List.of(ON), List.copyOf(window.state().selection().steps()));
    }

    /** The colour that is painted in the left upper corner of a card, beside all letters. */
    private int painted(Rectangle card) {
        Component surface = window.surface();
        return GuiActionRunner.execute(
                () -> {
                    BufferedImage image =
                            new BufferedImage(
                                    surface.getWidth(),
                                    surface.getHeight(),
                                    BufferedImage.TYPE_INT_RGB);
                    Graphics2D graphics = image.createGraphics();
                    graphics.setClip(card);
                    surface.paint(graphics);
                    graphics.dispose();
                    return image.getRGB(card.x + 10, card.y + 6);
                });
    }
}
