package counterstep.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.ledger.FastenerState;
import counterstep.ledger.Ledger;
import counterstep.ledger.Witness;
import counterstep.ledger.Witness.Reading;
import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class WitnessWordsTest {
    private static final ItemId SCREWS = new ItemId("f1");
    private static final Procedure PROCEDURE =
            Sketch.of()
                    .screws("f1", 5)
                    .steps("check", "check", "check", "remove f1 2", "check", "check")
                    .steps("remove f1 3", "reinstall f1 5")
                    .procedure();

    private static List<String> lines(int[] first, Optional<StepId> then, Reading... readings) {
        List<StepId> steps = IntStream.of(first).mapToObj(WitnessWordsTest::step).toList();
        return WitnessWords.lines(
                new Witness(steps, then, SCREWS, List.of(readings), false), Index.of(PROCEDURE));
    }

    private static StepId step(int number) {
        return new StepId("s" + number);
    }

    @Test
    void tellsTheStateAfterEachStepThatActsAndTheStepThatGoesWrong() {
        assertEquals(
                List.of(
                        "steps 1 to 4: f1 screws 3 tight, 2 out",
                        "steps 6, 2, 3",
                        "step 8 goes wrong"),
                lines(
                        new int[] {1, 2, 3, 4, 6, 2, 3},
                        Optional.of(step(8)),
                        new Reading(step(4), new FastenerState(3, 0, 2, 2))));
    }

    @Test
    void aStepThatNeedsNothingBeforeItGoesWrongAtOnce() {
        assertEquals(List.of("step 8 goes wrong"), lines(new int[] {}, Optional.of(step(8))));
    }

    @Test
    void anOrderThatEndsWrongSaysSo() {
        assertEquals(
                List.of(
                        "step 8: f1 screws 10 tight, 5 too many in",
                        "steps 1, 2, 4: f1 screws 8 tight, 3 too many in",
                        "then all is done, and it stays so"),
                lines(
                        new int[] {8, 1, 2, 4},
                        Optional.empty(),
                        new Reading(step(8), new FastenerState(10, 0, -5, -5)),
                        new Reading(step(4), new FastenerState(8, 0, -3, -3))));
    }

    @Test
    void everyKindOfItemHasWordsForItsState() {
        Sketch sketch =
                Sketch.of()
                        .part("p1")
                        .connectors("c1", 1)
                        .clips("k1", 3)
                        .ties("w1", 1)
                        .joint("j1")
                        .setting("g1", "p1")
                        .step("note g1; disconnect c1; unclip k1 2; cut w1; release j1; remove p1");
        Procedure procedure = sketch.procedure();
        Ledger ledger = Ledger.of(procedure);
        assertEquals(
                List.of("off", "open", "1 closed, 2 open", "cut", "released", "disturbed"),
                procedure.items().stream()
                        .map(item -> StateWords.of(item, ledger.atEnd(item.id())))
                        .toList());
        assertEquals(
                List.of("in place", "closed", "3 closed", "holding", "holding", "as found"),
                procedure.items().stream()
                        .map(item -> StateWords.of(item, ledger.atStart(item.id())))
                        .toList());
    }
}
