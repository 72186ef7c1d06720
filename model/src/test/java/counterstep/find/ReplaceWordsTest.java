package counterstep.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ReplaceWordsTest {
    private static final Procedure PUMP =
            Procedure.titled("pump", "Pump")
                    .draft()
                    .steps(
                            List.of(
                                    step(
                                            "s1",
                                            "Lid off",
                                            "Lift the lid. Lids bend; keep the lid\nflat."),
                                    step("s2", "Cup out", "Lay it into the lid.")))
                    .procedure();

    private static Step step(String id, String title, String text) {
        return Step.titled(new StepId(id), Phase.TEARDOWN, title).draft().text(text).step();
    }

    private static List<String> texts(Procedure procedure) {
        return procedure.steps().stream().map(step -> step.title() + ": " + step.text()).toList();
    }

    @Test
    void capitalsAtTheBeginningStay() {
        assertEquals(
                List.of(
                        "Cover off: Lift the cover. Covers bend; keep the cover\nflat.",
                        "Cup out: Lay it into the cover."),
                texts(new ReplaceWords(new Sought("lid", false), "cover").apply(PUMP)));
    }

    @Test
    void wholeWordsLeaveLongerOnesAlone() {
        assertEquals(
                List.of(
                        "Cover off: Lift the cover. Lids bend; keep the cover\nflat.",
                        "Cup out: Lay it into the cover."),
                texts(new ReplaceWords(new Sought("lid", true), "cover").apply(PUMP)));
    }

    @Test
    void whatIsPutThereIsTakenToTheLetter() {
        assertEquals(
                "Cup out: Lay it into the $1\\.",
                texts(new ReplaceWords(new Sought("lid", true), "$1\\").apply(PUMP)).get(1));
    }

    @Test
    void aLineBreakCountsAsABlank() {
        assertEquals(
                List.of(new TextPlace(new StepId("s1"), TextPart.TEXT, 34, 42)),
                new Sought(" lid  flat", true).in(PUMP));
    }

    @Test
    void placesAreToldInPageOrder() {
        assertEquals(
                List.of(
                        new TextPlace(new StepId("s1"), TextPart.TITLE, 0, 3),
                        new TextPlace(new StepId("s1"), TextPart.TEXT, 9, 12),
                        new TextPlace(new StepId("s1"), TextPart.TEXT, 34, 37),
                        new TextPlace(new StepId("s2"), TextPart.TEXT, 16, 19)),
                new Sought("LID", true).in(PUMP));
    }

    @Test
    void noWordsAreNowhere() {
        Sought nothing = new Sought("  ", false);
        assertEquals(List.of(), nothing.in(PUMP));
        assertSame(PUMP, new ReplaceWords(nothing, "x").apply(PUMP));
    }
}
