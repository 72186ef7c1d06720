package counterstep.check.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class ThingThatIsNoItemTest {
    private static List<String> of(String text) {
        Sketch lid = Sketch.of().screws("lid", 6).connectors("fan", 1).joint("seam");
        return Found.in(lid.step("check").text(text));
    }

    @Test
    void whatIsTakenOffMustBeAnItem() {
        assertEquals(
                List.of(
                        "thing-that-is-no-item [s1] [] Step 1 speaks of 'bracket' and 'left"
                                + " clasp', which are no items."),
                of("Lift the bracket off. Remove the two left clasp."));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Take out the **ratchet**.",
                "If the lamp is off, remove the ratchet.",
                "Put the lid bracket aside.",
                "Unscrew the lid and the shield."
            })
    void itIsFoundAfterAnyInstructionThatMovesIt(String text) {
        assertEquals(1, of(text).size(), () -> of(text).toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Remove the lid screws.",
                "Take out the screw at the left edge.",
                "Unplug the fan lead.",
                "Peel the adhesive off.",
                "Remove the four that are left.",
                "Lift the `BRACKET` off.",
                "Disconnect the J4 terminal.",
                "Tighten the screws a little more.",
                "Remove the remaining dust.",
                "Touch the rear panel.",
                "The bracket stays on.",
                "Do not remove the bracket.",
                "Remove everything."
            })
    void knownThingsAndWhatIsNotMovedAreFine(String text) {
        assertEquals(List.of(), of(text));
    }

    @Test
    void aToolOrSupplyIsKnown() {
        var procedure = Sketch.of().step("check").text("Remove the ratchet.").procedure();
        assertEquals(1, Found.in(procedure).size());
        assertEquals(List.of(), Found.in(Languages.titled(procedure, "Exchange the ratchet")));
    }
}
