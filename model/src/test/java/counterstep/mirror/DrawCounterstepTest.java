package counterstep.mirror;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.testing.AnyProcedure;
import counterstep.testing.RandomProcedure;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class DrawCounterstepTest {
    private static Procedure drawn(Procedure procedure) {
        return DrawCounterstep.of(procedure, Set.of()).apply(procedure);
    }

    private static Sketch lid() {
        return Sketch.of().screws("f1", 4).part("p1", "f1", "", "").steps("remove f1", "remove p1");
    }

    @Test
    void itIsNamedAfterHowManyAreDrawn() {
        Procedure procedure = lid().procedure();
        StepId first = procedure.steps().get(0).id();
        assertEquals("Draw the counterstep", DrawCounterstep.of(procedure, Set.of(first)).name());
        assertEquals("Draw 2 countersteps", DrawCounterstep.of(procedure, Set.of()).name());
    }

    @Test
    void titlesAndTextsSayWhatIsDone() {
        List<Step> steps = drawn(lid().procedure()).steps();
        assertEquals("P1 part on", steps.get(2).title());
        assertEquals("Put the p1 part back.", steps.get(2).text());
        assertEquals("F1 screws in", steps.get(3).title());
        assertEquals("Drive the four f1 screws in.", steps.get(3).text());
    }

    @Test
    void timeIsThatOfTheRemoval() {
        assertEquals(10, drawn(lid().procedure()).steps().get(2).seconds().orElseThrow());
    }

    @Test
    void whereAllIsBackNothingChanges() {
        Procedure procedure = drawn(lid().procedure());
        assertEquals(procedure, drawn(procedure));
        assertEquals(Set.of(), DrawCounterstep.of(procedure, Set.of()).steps());
    }

    @Test
    void anyDocumentAtAllIsDrawnWithoutStumbling() {
        for (long seed = 0; seed < 1_000; seed++) {
            Procedure faulty = RandomProcedure.withSteps(8, seed);
            assertTrue(drawn(faulty).steps().size() >= faulty.steps().size(), "seed " + seed);
            Procedure any = AnyProcedure.of(seed);
            assertTrue(drawn(any).steps().size() >= any.steps().size(), "seed " + seed);
        }
    }
}
