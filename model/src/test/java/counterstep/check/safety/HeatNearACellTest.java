package counterstep.check.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.ReleaseMethod;
import counterstep.model.ToolKind;
import counterstep.testing.Found;
import counterstep.testing.Heated;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class HeatNearACellTest {
    private static Sketch withCell() {
        return Sketch.of()
                .item(Heated.cell("e1", ""))
                .item(Heated.joint("j1", ReleaseMethod.HEAT, "cell below 45 °C"));
    }

    @Test
    void heatBesideACellNeedsAHazard() {
        assertEquals(
                List.of(
                        "heat-near-a-cell [s1] [e1] Step 1 heats with cell in the device, and no"
                                + " hazard says what heat does to it."),
                Found.in(withCell().steps("release j1", "rejoin j1")));
    }

    @Test
    void aHeaterIsHeatToo() {
        assertEquals(
                1,
                Found.in(withCell().tool("t1", ToolKind.HEATER).step("wait wait 60 with t1"))
                        .size());
    }

    @Test
    void aHazardBeforeItIsEnough() {
        assertEquals(
                List.of(),
                Found.in(
                        withCell()
                                .step("check")
                                .hazard("A heated cell burns.", "Burns.", "Keep it cool.")
                                .steps("release j1", "rejoin j1")));
    }

    @Test
    void oneAfterItComesTooLate() {
        assertEquals(
                1,
                Found.in(
                                withCell()
                                        .step("release j1")
                                        .step("rejoin j1")
                                        .hazard("A heated cell burns.", "Burns.", "Keep it cool."))
                        .size());
    }

    @Test
    void oneThatDoesNotSpeakOfHeatIsAnother() {
        assertEquals(
                1,
                Found.in(
                                withCell()
                                        .step("release j1")
                                        .hazard("A pierced cell burns.", "Smoke.", "No blades.")
                                        .step("rejoin j1"))
                        .size());
    }
}
