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
import counterstep.testing.Mended;
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
    void aToolThatNeitherTurnsNorGripsAFastenerDoesNotFit() {
        assertEquals(1, Found.in(with(Optional.empty(), ToolKind.ANTISTATIC)).size());
        assertEquals(1, Found.in(with(Optional.empty(), ToolKind.CUTTER)).size());
    }

    @Test
    void aDriverDerivedFromTheScrewFits() {
        Sketch sketch = Sketch.of().item(Screws.hexalobular("f1", 2, "5"));
        assertEquals(List.of(), Found.in(sketch.steps("remove f1", "reinstall f1")));
    }

    @Test
    void aListedToolThatFitsTakesItsPlace() {
        Sketch sketch = twoDrivers().item(Screws.hexalobular("f1", 2, "5"));
        Mended mended =
                Mended.of(
                                sketch.steps("remove f1 2 with t1", "reinstall f1 2 with t2")
                                        .procedure(),
                                "tool-does-not-fit")
                        .orElseThrow();
        assertEquals("Use t2 tool", mended.name());
        assertEquals(List.of(), Found.in(mended.procedure()));
    }

    private static Sketch twoDrivers() {
        return Sketch.of()
                .tool("t1", ToolKind.DRIVER, new Drive(DriveKind.HEXALOBULAR, "6"))
                .tool("t2", ToolKind.DRIVER, new Drive(DriveKind.HEXALOBULAR, "5"));
    }

    @Test
    void withoutOneItIsAddedAndTheWrongOneGoesIfItIsUsedNoMore() {
        Sketch sketch =
                Sketch.of()
                        .tool("t1", ToolKind.DRIVER, new Drive(DriveKind.HEXALOBULAR, "6"))
                        .item(Screws.hexalobular("f1", 2, "5"));
        Procedure wrong = sketch.steps("remove f1 2 with t1", "reinstall f1 2 with t1").procedure();
        Mended mended = Mended.of(wrong, "tool-does-not-fit").orElseThrow();
        assertEquals("Use driver T5", mended.name());
        assertEquals(
                List.of("driver T5"), mended.procedure().tools().stream().map(Tool::name).toList());
        assertEquals(List.of(), Found.in(mended.procedure()));
    }

    @Test
    void aStepThatTurnsOtherFastenersWithItKeepsItForThem() {
        Sketch sketch =
                twoDrivers()
                        .item(Screws.hexalobular("f1", 2, "5"))
                        .item(Screws.hexalobular("f2", 2, "6"))
                        .steps("remove f1; remove f2", "reinstall f2; reinstall f1");
        Procedure wrong = sketch.procedure();
        Procedure named =
                wrong.draft()
                        .steps(
                                wrong.steps().stream()
                                        .map(
                                                step ->
                                                        step.draft()
                                                                .tool(Optional.of(new ToolId("t1")))
                                                                .step())
                                        .toList())
                        .procedure();
        Mended mended = Mended.of(named, "tool-does-not-fit").orElseThrow();
        assertEquals("Use t2 tool", mended.name());
        assertEquals(List.of(), Found.in(mended.procedure()));
    }
}
