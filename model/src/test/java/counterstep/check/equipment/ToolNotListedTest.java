package counterstep.check.equipment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Drive;
import counterstep.model.DriveKind;
import counterstep.model.ToolKind;
import counterstep.testing.Found;
import counterstep.testing.Mended;
import counterstep.testing.Screws;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ToolNotListedTest {
    private static final Drive T5 = new Drive(DriveKind.HEXALOBULAR, "5");

    private static Sketch twoSizes() {
        return Sketch.of()
                .tool("t1", ToolKind.DRIVER, T5)
                .item(Screws.hexalobular("f1", 2, "5"))
                .item(Screws.hexalobular("f2", 2, "6"))
                .steps("remove f1; remove f2", "reinstall f2; reinstall f1");
    }

    @Test
    void aDriverThatOnlyTheDriveAsksForIsMissed() {
        assertEquals(
                List.of(
                        "tool-not-listed [s1, s2] [f2] Driver T6 is used in steps 1 and 2, but is"
                                + " not on the tool list."),
                Found.in(twoSizes()));
    }

    @Test
    void itIsAddedToTheList() {
        Mended mended = Mended.of(twoSizes().procedure(), "tool-not-listed").orElseThrow();
        assertEquals("Add to tool list", mended.name());
        assertEquals("driver T6", mended.procedure().tools().get(1).name());
        assertEquals(List.of(), Found.in(mended.procedure()));
    }

    @Test
    void withoutAListNothingIsMissed() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .item(Screws.hexalobular("f1", 2, "5"))
                                .steps("remove f1", "reinstall f1")));
    }
}
