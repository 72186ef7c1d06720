package counterstep.check.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Mended;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class HazardTooLateTest {
    private static Sketch lateByOneStep() {
        return Sketch.of()
                .connectors("c1", 1)
                .steps("disconnect c1", "check")
                .hazardOn("c1")
                .step("reconnect c1");
    }

    private static void assertMended(String name, Sketch sketch) {
        Mended mended = Mended.of(sketch.procedure(), "hazard-too-late").orElseThrow();
        assertEquals(name, mended.name());
        assertEquals(List.of(), Found.in(mended.procedure()));
    }

    @Test
    void aHazardComesBeforeWhatItSpeaksOf() {
        Sketch sketch = lateByOneStep().link(1, 2).link(2, 3);
        assertEquals(
                List.of(
                        "hazard-too-late [s2, s1] [c1] The WARNING on c1 plugs comes in step 2;"
                                + " before it step 1 acts on it."),
                Found.in(sketch));
        assertMended("Move to step 1", sketch);
    }

    /** The one before it on the page is linked to it, the other is free. */
    private static Sketch freeOfTheOther() {
        return Sketch.of()
                .connectors("c1", 1)
                .steps("check")
                .hazardOn("c1")
                .steps("disconnect c1", "reconnect c1")
                .link(2, 3);
    }

    @Test
    void inEveryOrderThatTheLinksAllow() {
        assertEquals(
                List.of(
                        "hazard-too-late [s1, s2] [c1] In some order: The WARNING on c1 plugs"
                                + " comes in step 1; before it step 2 acts on it."),
                Found.in(freeOfTheOther()));
        assertMended("Move to step 2", freeOfTheOther());
    }

    @Test
    void aLinkSettlesIt() {
        assertEquals(List.of(), Found.in(freeOfTheOther().link(1, 2)));
    }

    @Test
    void oneThatIsAboutPuttingBackMayComeAfterTakingOff() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .connectors("c1", 1)
                                .steps("disconnect c1", "reconnect c1")
                                .hazardOn("c1")));
    }

    @Test
    void theSameHazardAgainIsNotLate() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .connectors("c1", 1)
                                .steps("disconnect c1")
                                .hazardOn("c1")
                                .steps("reconnect c1", "disconnect c1")
                                .hazardOn("c1")
                                .step("reconnect c1")
                                .link(1, 2)
                                .link(2, 3)
                                .link(3, 4)));
    }

    @Test
    void lookingIsNoDeed() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .connectors("c1", 1)
                                .steps("check c1", "disconnect c1")
                                .hazardOn("c1")
                                .steps("reconnect c1")));
    }

    @Test
    void aLoopInTheLinksAllowsNoOrder() {
        assertEquals(
                List.of("loop-in-the-links"),
                Found.in(freeOfTheOther().link(3, 2)).stream()
                        .map(line -> line.split(" ")[0])
                        .filter(
                                check ->
                                        check.equals("loop-in-the-links")
                                                || check.startsWith("hazard"))
                        .toList());
    }
}
