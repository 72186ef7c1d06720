package counterstep.check.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.ReleaseMethod;
import counterstep.testing.Found;
import counterstep.testing.Heated;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class HeatWithoutLimitTest {
    private static Sketch with(ReleaseMethod method, String limit) {
        return Sketch.of()
                .item(Heated.cell("e1", "c1"))
                .item(Heated.joint("j1", method, limit))
                .connectors("c1", 1);
    }

    private static List<String> heated(ReleaseMethod method, String limit) {
        return Found.in(
                with(method, limit)
                        .step("release j1")
                        .hazard("A hot cell burns.", "Burns.", "Keep it cool.")
                        .step("rejoin j1"));
    }

    @Test
    void heatBesideACellNeedsALimit() {
        assertEquals(
                List.of(
                        "heat-without-limit [s1] [j1, e1] Step 1 heats j1 joint with cell in the"
                                + " device: how warm may it get there?"),
                heated(ReleaseMethod.HEAT, ""));
    }

    @Test
    void aLimitIsEnough() {
        assertEquals(List.of(), heated(ReleaseMethod.HEAT, "cell below 45 °C"));
    }

    @Test
    void pullingHeatsNothing() {
        assertEquals(List.of(), heated(ReleaseMethod.PULL, ""));
    }

    @Test
    void aCellThatIsOutGetsNotWarm() {
        assertEquals(
                List.of(),
                Found.in(
                        with(ReleaseMethod.HEAT, "")
                                .item(called("battery pack"))
                                .steps(
                                        "disconnect c1; remove p1",
                                        "release j1",
                                        "rejoin j1",
                                        "reinstall p1; reconnect c1")));
    }

    @Test
    void aBoardOnTheSamePlugIsNoCell() {
        assertEquals(
                List.of("heat-without-limit", "heat-near-a-cell"),
                Found.in(
                                with(ReleaseMethod.HEAT, "")
                                        .item(called("power board"))
                                        .steps(
                                                "disconnect c1; remove p1",
                                                "release j1",
                                                "rejoin j1",
                                                "reinstall p1; reconnect c1"))
                        .stream()
                        .map(line -> line.split(" ")[0])
                        .toList());
    }

    private static Part called(String name) {
        return Part.named(new ItemId("p1"), name)
                .withFacts(List.of(), List.of(new ItemId("c1")), List.of());
    }

    @Test
    void withoutACellItNeedsNone() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .item(Heated.joint("j1", ReleaseMethod.HEAT, ""))
                                .steps("release j1", "rejoin j1")));
    }
}
