package counterstep.check.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class HazardIncompleteTest {
    @Test
    void whatIsMissingIsToldOnceAStep() {
        assertEquals(
                List.of(
                        "hazard-incomplete [s1] [k1] The WARNING lacks the consequence and how to"
                                + " avoid it and the WARNING lacks the hazard in step 1."),
                Found.in(
                        Sketch.of()
                                .clips("k1", 1)
                                .step("unclip k1")
                                .hazard("Sharp edge.", "", " ", "k1")
                                .hazard("", "Cuts.", "Wear gloves.")
                                .step("clip k1")));
    }

    @Test
    void aCompleteOneIsRight() {
        assertEquals(List.of(), Found.in(Sketch.of().step("wait").hazardOn()));
    }
}
