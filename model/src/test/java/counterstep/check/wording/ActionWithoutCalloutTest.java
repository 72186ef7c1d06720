package counterstep.check.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ActionWithoutCalloutTest {
    private static List<String> of(String... callouts) {
        var procedure =
                Sketch.of()
                        .screws("lid", 2)
                        .clips("rim", 4)
                        .setting("gap")
                        .step("note gap; loosen lid; unclip rim; clean lid")
                        .step("restore gap; clip rim; tighten lid")
                        .procedure();
        return Found.in(Callouts.on(procedure, callouts));
    }

    @Test
    void whatHasNoNumberBesideThatWhichHasIsTold() {
        assertEquals(
                List.of("action-without-callout [s1] [rim] In step 1, no callout shows rim clips."),
                of("lid"));
    }

    @Test
    void allNumberedIsFine() {
        assertEquals(List.of(), of("lid", "rim"));
    }

    @Test
    void aPhotoWithoutNumbersIsLeftAlone() {
        assertEquals(List.of(), of());
    }
}
