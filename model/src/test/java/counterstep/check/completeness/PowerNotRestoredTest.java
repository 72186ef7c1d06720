package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.PartFacts;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PowerNotRestoredTest {
    @Test
    void isolatedForGood() {
        assertEquals(
                List.of(
                        "power-not-restored [s1] [e1] E1 power is isolated in step 1 and never restored."),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .item(PartFacts.source("e1", "p1", "", "", 0))
                                .steps("isolate e1", "check p1")));
    }

    @Test
    void isolatedTwiceAndRestoredOnce() {
        assertEquals(
                List.of(
                        "power-not-restored [s1, s2, s3] [e1] E1 power is isolated in steps 1 and 2 and restored only in step 3."),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .item(PartFacts.source("e1", "p1", "", "", 0))
                                .steps("isolate e1", "isolate e1", "restore power e1")));
    }

    @Test
    void anOpenPlugIsToldAsLeftOpen() {
        assertEquals(
                List.of("left-open [s1] [c1] C1 plugs is opened in step 1 and never closed again."),
                Found.in(
                        Sketch.of()
                                .connectors("c1", 1)
                                .item(PartFacts.source("e1", "", "c1", "", 0))
                                .steps("disconnect c1")));
    }

    @Test
    void isSilentWhenRestored() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .item(PartFacts.source("e1", "p1", "", "", 0))
                                .steps("isolate e1", "check p1", "restore power e1")));
    }
}
