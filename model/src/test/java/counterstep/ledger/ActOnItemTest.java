package counterstep.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Action;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Verb;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ActOnItemTest {
    private static Sketch pump() {
        return Sketch.of().screws("f1", 4).connectors("c1", 1).part("p1", "f1", "", "");
    }

    /** The action that is added to the last step. */
    private static Action added(Procedure before, String item) {
        List<Step> steps = before.steps();
        StepId last = steps.get(steps.size() - 1).id();
        Procedure after = new ActOnItem(last, new ItemId(item)).apply(before);
        List<Action> actions = after.step(last).actions();
        assertEquals(before.step(last).actions().size() + 1, actions.size());
        return actions.get(actions.size() - 1);
    }

    private static void assertAdds(Verb verb, int count, String item, String... steps) {
        Action added = added(pump().steps(steps).procedure(), item);
        assertEquals(Action.of(verb, new ItemId(item), count), added);
    }

    @Test
    void whatIsOnIsTakenOff() {
        assertAdds(Verb.REMOVE, 4, "f1", "check");
        assertAdds(Verb.DISCONNECT, 1, "c1", "check");
        assertAdds(Verb.REMOVE, 1, "p1", "remove f1");
    }

    @Test
    void whatIsOutIsPutBack() {
        assertAdds(Verb.REINSTALL, 4, "f1", "remove f1 4", "check");
        assertAdds(Verb.RECONNECT, 1, "c1", "disconnect c1", "check");
        assertAdds(Verb.RETURN, 1, "p1", "remove f1", "move aside p1");
    }

    @Test
    void whatIsFingerTightIsTightened() {
        assertAdds(Verb.TIGHTEN, 4, "f1", "remove f1 4", "reinstall f1 4 finger-tight", "check");
    }

    @Test
    void whatComesOffInALaterStepIsStillOn() {
        Procedure before = pump().steps("check", "remove f1 4").procedure();
        StepId first = before.steps().get(0).id();
        Procedure after = new ActOnItem(first, new ItemId("f1")).apply(before);
        assertEquals(Verb.REMOVE, after.step(first).actions().get(1).verb());
    }

    @Test
    void aStepWithoutTitleIsNamedAfterIt() {
        Procedure before = pump().steps("check").procedure();
        Step first = before.steps().get(0).draft().title("").step();
        Procedure untitled = before.draft().steps(List.of(first)).procedure();
        Procedure after = new ActOnItem(first.id(), new ItemId("p1")).apply(untitled);
        String name = before.item(new ItemId("p1")).name();
        assertEquals("Remove " + name, after.step(first.id()).title());
    }
}
