package counterstep.editor.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Theme;
import counterstep.model.Link;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What the plan says is seen on steps and on folded phases; painted into an image. */
final class PlanMarksTest {
    private static final StepId OFF = new StepId("s1");
    private static final StepId OUT = new StepId("s2");

    private static Procedure pump() {
        return Procedure.titled("pump", "Pump")
                .draft()
                .steps(List.of(timed(OFF, "Lid off"), timed(OUT, "Rotor out")))
                .links(List.of(Link.drawn(OFF, OUT)))
                .procedure();
    }

    private static Step timed(StepId id, String title) {
        return Step.titled(id, Phase.TEARDOWN, title).draft().seconds(OptionalInt.of(60)).step();
    }

    private static int heavyPixels(GraphImage drawing) throws Exception {
        return GraphImage.on(
                () -> {
                    BufferedImage image = GraphImage.blank();
                    drawing.paint(image);
                    int heavy = Palette.CRITICAL.color().getRGB();
                    int found = 0;
                    for (int y = 0; y < image.getHeight(); y++) {
                        for (int x = 0; x < image.getWidth(); x++) {
                            found += image.getRGB(x, y) == heavy ? 1 : 0;
                        }
                    }
                    return found;
                });
    }

    @Test
    void aFoldedPhaseWithACriticalStepHasTheHeavyLineToo() throws Exception {
        GraphImage drawing = new GraphImage(pump(), Theme.LIGHT);
        GraphImage.on(
                () -> {
                    drawing.graph.lessMotion(true);
                    drawing.graph.foldAll();
                    return drawing.graph.boundsOf(Phase.TEARDOWN).orElseThrow();
                });
        assertTrue(heavyPixels(drawing) > 100);
        GraphImage.on(
                () -> {
                    drawing.graph.showCritical(false);
                    return true;
                });
        assertEquals(0, heavyPixels(drawing));
    }
}
