package counterstep.check.equipment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.ToolKind;
import counterstep.testing.Found;
import counterstep.testing.Mended;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ToolNotUsedTest {
    private static Sketch threeTools() {
        return Sketch.of()
                .tool("t1", ToolKind.PICK)
                .tool("t2", ToolKind.KNIFE)
                .tool("t3", ToolKind.HEATER)
                .clips("k1", 2)
                .steps("unclip k1 2 with t1", "wait wait 60 with t3", "clip k1");
    }

    @Test
    void whatNoStepUsesIsToldOnce() {
        assertEquals(
                List.of("tool-not-used [] [] T2 tool is on the tool list, but used in no step."),
                Found.in(threeTools()));
    }

    @Test
    void severalAreOneFinding() {
        assertEquals(
                List.of(
                        "tool-not-used [] [] T1 tool and t2 tool are on the tool list, but used in"
                                + " no step."),
                Found.in(Sketch.of().tool("t1", ToolKind.PICK).tool("t2", ToolKind.KNIFE)));
    }

    @Test
    void itIsTakenOffTheList() {
        Mended mended = Mended.of(threeTools().procedure(), "tool-not-used").orElseThrow();
        assertEquals("Take off the tool list", mended.name());
        assertEquals(2, mended.procedure().tools().size());
        assertEquals(List.of(), Found.in(mended.procedure()));
    }
}
