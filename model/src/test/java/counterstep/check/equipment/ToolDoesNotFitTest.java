package counterstep.check.equipment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Drive;
import counterstep.model.DriveKind;
import counterstep.model.Extras;
import counterstep.model.Procedure;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import counterstep.model.ToolKind;
import counterstep.testing.Found;
import counterstep.testing.Screws;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class ToolDoesNotFitTest {
    /** Two T5 screws out and in again, every step with the one tool of the list. */
    private static Procedure with(Optional<Drive> drive, ToolKind kind) {
        ToolId id = new ToolId("t1");
        Tool tool = new Tool(id, "the tool", kind, drive, true, "", Extras.NONE);
        Procedure sketch =
                Sketch.of()
                        .item(Screws.hexalobular("f1", 2, "5"))
                        .steps("remove f1", "check f1", "reinstall f1")
                        .procedure();
        return sketch.draft()
                .tools(List.of(tool))
                .steps(
                        sketch.steps().stream()
                                .map(step -> step.draft().tool(Optional.of(id)).step())
                                .toList())
                .procedure();
    }

    private static Procedure withDriver(DriveKind kind, String size) {
        return with(Optional.of(new Drive(kind, size)), ToolKind.DRIVER);
    }

    @Test
    void oneWrongDriverIsOneFaultInAllItsSteps() {
        assertEquals(
                List.of(
                        "tool-does-not-fit [s1, s3] [f1] The tool does not fit f1 screws in steps"
                                + " 1 and 3: they need T5."),
                Found.in(withDriver(DriveKind.HEXALOBULAR, "6")));
    }

    @Test
    void aSharedSizeOfAnotherDriveDoesNotFit() {
        assertEquals(1, Found.in(withDriver(DriveKind.CROSS_H, "5")).size());
    }

    @Test
    void theRightDriverFits() {
        assertEquals(List.of(), Found.in(withDriver(DriveKind.HEXALOBULAR, "5")));
    }

    @Test
    void aDriverForPinsTurnsPlainRecessesToo() {
        assertEquals(List.of(), Found.in(withDriver(DriveKind.HEXALOBULAR_PIN, "5")));
    }

    @Test
    void aToolWithoutDriveIsNotDoubted() {
        assertEquals(List.of(), Found.in(with(Optional.empty(), ToolKind.TWEEZERS)));
    }

    @Test
    void aDriverDerivedFromTheScrewFits() {
        Sketch sketch = Sketch.of().item(Screws.hexalobular("f1", 2, "5"));
        assertEquals(List.of(), Found.in(sketch.steps("remove f1", "reinstall f1")));
    }
}
