package counterstep.toolchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Action;
import counterstep.model.Drive;
import counterstep.model.DriveKind;
import counterstep.model.Extras;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import counterstep.model.ToolKind;
import counterstep.model.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class ToolingTest {
    private static final Drive T5 = new Drive(DriveKind.HEXALOBULAR, "5");
    private static final Drive HEX = new Drive(DriveKind.HEXAGON_SOCKET, "2.5");
    private static final Tool DRIVER = tool("t1", "bench driver", Optional.of(T5), true);
    private static final Tool PICK = tool("t2", "pick", Optional.empty(), true);
    private static final Tool STRAP = tool("t3", "wrist strap", Optional.empty(), false);
    private static final Item LID_SCREWS = screws("f1", T5);
    private static final Item FOOT_SCREWS = screws("f2", HEX);
    private static final Item LID = Part.named(new ItemId("p1"), "lid");

    private static Tool tool(String id, String name, Optional<Drive> drive, boolean inHand) {
        return new Tool(new ToolId(id), name, ToolKind.OTHER, drive, inHand, "", Extras.NONE);
    }

    private static Item screws(String id, Drive drive) {
        return FastenerSet.screws(new ItemId(id), id, 4, Optional.of(drive));
    }

    private static Action act(Verb verb, Item item) {
        return Action.of(verb, item.id(), 1);
    }

    private static Action with(Action action, Tool tool) {
        return action.draft().tool(Optional.of(tool.id())).action();
    }

    private static Step step(Optional<Tool> tool, Action... actions) {
        return Step.titled(new StepId("s1"), Phase.TEARDOWN, "step")
                .draft()
                .tool(tool.map(Tool::id))
                .actions(List.of(actions))
                .step();
    }

    private static Procedure procedure(Step... steps) {
        List<Step> numbered = new ArrayList<>();
        for (Step step : steps) {
            Step fresh = Step.titled(new StepId("s" + (numbered.size() + 1)), step.phase(), "step");
            numbered.add(fresh.draft().tool(step.tool()).actions(step.actions()).step());
        }
        return Procedure.titled("p", "Pump")
                .draft()
                .items(List.of(LID_SCREWS, FOOT_SCREWS, LID))
                .tools(List.of(DRIVER, PICK, STRAP))
                .steps(numbered)
                .procedure();
    }

    private static List<String> pickUps(Step... steps) {
        return ToolChanges.inPageOrder(procedure(steps)).pickUps().stream()
                .map(up -> up.step() + "/" + up.action() + " " + up.tool().name())
                .toList();
    }

    private static String toolOf(Step step) {
        return Tooling.of(procedure(step))
                .toolOf(step, step.actions().get(0))
                .map(Tool::name)
                .orElse("bare hands");
    }

    @Test
    void anActionsOwnToolGoesBeforeTheStepsAndThatBeforeTheDrives() {
        Action out = act(Verb.REMOVE, LID_SCREWS);
        assertEquals("wrist strap", toolOf(step(Optional.of(PICK), with(out, STRAP))));
        assertEquals("pick", toolOf(step(Optional.of(PICK), out)));
        assertEquals("bench driver", toolOf(step(Optional.empty(), out)));
    }

    @Test
    void aDriveThatNoListedToolHasGetsAToolMadeUpForIt() {
        assertEquals("key hex 2.5", toolOf(step(Optional.empty(), act(Verb.LOOSEN, FOOT_SCREWS))));
    }

    @Test
    void onlyTurningAsksForADriver() {
        assertEquals("bare hands", toolOf(step(Optional.empty(), act(Verb.DISCARD, LID_SCREWS))));
        assertEquals("bare hands", toolOf(step(Optional.empty(), act(Verb.REMOVE, LID))));
    }

    @Test
    void aWaitIsBareHandsEvenInAStepWithATool() {
        Action wait = Action.of(Verb.WAIT, Optional.empty(), 1);
        assertEquals("bare hands", toolOf(step(Optional.of(PICK), wait)));
    }

    @Test
    void theFirstPickUpCountsAndBareHandsDoNotPutTheToolDown() {
        assertEquals(
                List.of("s1/0 bench driver"),
                pickUps(
                        step(Optional.empty(), act(Verb.REMOVE, LID_SCREWS), act(Verb.REMOVE, LID)),
                        step(Optional.empty(), act(Verb.REINSTALL, LID_SCREWS))));
    }

    @Test
    void aToolThatIsNotHeldIsNoChangeAndDoesNotPutTheToolDown() {
        assertEquals(
                List.of("s2/0 bench driver"),
                pickUps(
                        step(Optional.of(STRAP)),
                        step(Optional.empty(), act(Verb.REMOVE, LID_SCREWS)),
                        step(Optional.of(STRAP), act(Verb.REMOVE, LID)),
                        step(Optional.empty(), act(Verb.REINSTALL, LID_SCREWS))));
    }

    @Test
    void changesAreCountedActionByActionAndAStepWithoutActionsUsesItsToolOnce() {
        Action out = act(Verb.REMOVE, LID_SCREWS);
        assertEquals(
                List.of(
                        "s1/0 bench driver",
                        "s1/1 pick",
                        "s1/2 bench driver",
                        "s2/0 pick",
                        "s3/0 key hex 2.5"),
                pickUps(
                        step(Optional.empty(), out, with(out, PICK), out),
                        step(Optional.of(PICK)),
                        step(Optional.empty(), act(Verb.REMOVE, FOOT_SCREWS))));
    }

    @Test
    void noStepNoChange() {
        assertEquals(0, ToolChanges.inPageOrder(procedure()).count());
    }

    @Test
    void toolsAreListedInOrderOfFirstUseWithAllTheirSteps() {
        Action wait = Action.of(Verb.WAIT, Optional.empty(), 1);
        List<String> uses =
                Tooling.of(
                                procedure(
                                        step(Optional.of(STRAP)),
                                        step(
                                                Optional.empty(),
                                                act(Verb.REMOVE, FOOT_SCREWS),
                                                act(Verb.REMOVE, LID_SCREWS)),
                                        step(Optional.of(PICK), wait),
                                        step(Optional.empty(), act(Verb.REINSTALL, LID_SCREWS))))
                        .byFirstUse()
                        .stream()
                        .map(use -> use.tool().name() + " " + use.steps())
                        .toList();
        assertEquals(
                List.of(
                        "wrist strap [s1]",
                        "key hex 2.5 [s2]",
                        "bench driver [s2, s4]",
                        "pick [s3]"),
                uses);
    }
}
