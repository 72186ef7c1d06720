package counterstep.editor.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Action;
import counterstep.model.Drive;
import counterstep.model.DriveKind;
import counterstep.model.FastenerSet;
import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StepMarksTest {
    private static final Drive T5 = new Drive(DriveKind.HEXALOBULAR, "5");
    private static final ItemId SHORT = new ItemId("f1");
    private static final ItemId LONG = new ItemId("f2");
    private static final ItemId LID = new ItemId("p3");

    private static List<String> texts(Action... actions) {
        Step step =
                Step.titled(new StepId("s4"), Phase.TEARDOWN, "Lid off")
                        .draft()
                        .actions(List.of(actions))
                        .step();
        Procedure procedure =
                Procedure.titled("pump", "Pump")
                        .draft()
                        .items(
                                List.of(
                                        FastenerSet.screws(SHORT, "short", 3, Optional.of(T5)),
                                        FastenerSet.screws(LONG, "long", 2, Optional.of(T5)),
                                        Part.named(LID, "lid")))
                        .steps(List.of(step))
                        .procedure();
        return StepMarks.of(step, Index.of(procedure)).stream().map(StepMark::text).toList();
    }

    @Test
    void screwsOfOneDriveAreAddedUpAndPartsCarryNoMark() {
        assertEquals(
                List.of("5 × T5"),
                texts(
                        Action.of(Verb.REMOVE, SHORT, 3),
                        Action.of(Verb.REMOVE, LONG, 2),
                        Action.of(Verb.REMOVE, LID, 1)));
    }

    @Test
    void screwsThatAreLoosenedAndThenRemovedCountOnce() {
        assertEquals(
                List.of("3 × T5"),
                texts(Action.of(Verb.LOOSEN, SHORT, 3), Action.of(Verb.REMOVE, SHORT, 3)));
    }
}
