package counterstep.check.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class CalloutWithoutActionTest {
    private static Sketch lid() {
        return Sketch.of().screws("lid", 2).clips("rim", 4).step("loosen lid");
    }

    private static List<String> of(String text, String... callouts) {
        var procedure = lid().text(text).step("tighten lid").procedure();
        return Found.in(Callouts.on(procedure, callouts));
    }

    @Test
    void theNumbersThatNothingTakesUpAreTold() {
        assertEquals(
                List.of(
                        "callout-without-action [s1] [rim] In step 1, no action points to callouts"
                                + " 2 and 3."),
                of("", "lid", "rim", ""));
    }

    @Test
    void anActionOnItsItemTakesItUp() {
        assertEquals(List.of(), of("", "lid", "lid"));
    }

    @Test
    void theTextMayTakeItUpByNameOrNumber() {
        assertEquals(List.of(), of("Leave the Rim clips (2) closed. See 3.", "lid", "rim", ""));
    }
}
