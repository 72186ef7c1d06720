package counterstep.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.check.Finding;
import counterstep.json.JsonText;
import counterstep.ledger.FastenerState;
import counterstep.ledger.Witness;
import counterstep.ledger.Witness.Reading;
import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class FindingTextTest {
    private static final Index INDEX =
            Index.of(
                    Sketch.of()
                            .screws("f1", 2)
                            .steps("check", "remove f1 1", "remove f1 1", "reinstall f1")
                            .procedure());

    private static Finding finding(boolean bound) {
        ItemId screws = new ItemId("f1");
        StepId third = new StepId("s2");
        Witness witness =
                new Witness(
                        List.of(new StepId("s1"), third),
                        Optional.of(new StepId("s4")),
                        screws,
                        List.of(new Reading(third, new FastenerState(1, 0, 1, 1))),
                        bound);
        return new Finding(
                "action-not-possible",
                Severity.ERROR,
                "Too few are out.",
                List.of(new StepId("s4")),
                List.of(screws),
                Optional.of(witness),
                Optional.empty());
    }

    @Test
    void theOrderThatGoesWrongAndTheFixStandUnderTheFinding() {
        assertEquals(
                List.of(
                        "error action-not-possible step 4: Too few are out.",
                        "  goes wrong in this order:",
                        "    1. steps 1, 2: f1 screws 1 tight, 1 out",
                        "    2. step 4 goes wrong",
                        "  fix: Draw\u00a0it"),
                FindingText.lines(finding(false), Optional.of("Draw\u00a0it\u001b"), INDEX));
    }

    @Test
    void aBoundIsNamedAsSuch() {
        List<String> lines = FindingText.lines(finding(true), Optional.empty(), INDEX);
        assertEquals(
                "  Too many orders to try each: this one may be a false alarm.",
                lines.get(lines.size() - 1));
    }

    @Test
    void jsonTellsTheOrderByIdsAndTheStatesInWords() {
        assertEquals(
                "{\"check\":\"action-not-possible\",\"severity\":\"error\","
                        + "\"message\":\"Too few are out.\",\"steps\":[\"s4\"],\"items\":[\"f1\"],"
                        + "\"witness\":{\"first\":[\"s1\",\"s2\"],\"then\":\"s4\",\"about\":\"f1\","
                        + "\"readings\":[{\"after\":\"s2\",\"state\":\"1 tight, 1 out\"}],"
                        + "\"bound\":false},\"fix\":null,\"waived\":false}",
                JsonText.compact(FindingJson.of(finding(false), Optional.empty(), INDEX)));
    }
}
