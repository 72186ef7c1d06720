package counterstep.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import counterstep.model.Action;
import counterstep.model.CanvasPoint;
import counterstep.model.Comment;
import counterstep.model.CommentId;
import counterstep.model.Extras;
import counterstep.model.FastenerSet;
import counterstep.model.GroupRule;
import counterstep.model.Hold;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.LinkOrigin;
import counterstep.model.Part;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Standing;
import counterstep.model.Step;
import counterstep.model.StepGroup;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import counterstep.model.ToolKind;
import counterstep.model.Trial;
import counterstep.model.Verb;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class EditTest {
    private static final StepId FIRST = new StepId("s1");
    private static final StepId SECOND = new StepId("s2");
    private static final StepId THIRD = new StepId("s3");
    private static final ItemId SCREWS = new ItemId("f4");
    private static final ItemId LID = new ItemId("p5");
    private static final ToolId PICK = new ToolId("t6");

    private final Procedure pump = pump();

    private static Procedure pump() {
        Item screws = FastenerSet.screws(SCREWS, "lid screws", 4, Optional.empty());
        Item lid = Part.named(LID, "lid").withFacts(List.of(Hold.by(SCREWS)), List.of(), List.of());
        Tool pick = new Tool(PICK, "pick", ToolKind.PICK, Optional.empty(), true, "", Extras.NONE);
        Step out =
                Step.titled(FIRST, Phase.TEARDOWN, "Screws out")
                        .draft()
                        .actions(List.of(Action.of(Verb.REMOVE, SCREWS, 4)))
                        .standing(new Standing(Trial.DONE, "Kim", "unit 7", "2026-02-11"))
                        .step();
        Step off =
                Step.titled(SECOND, Phase.TEARDOWN, "Lid off")
                        .draft()
                        .actions(List.of(Action.of(Verb.REMOVE, LID, 1)))
                        .tool(Optional.of(PICK))
                        .step();
        return Procedure.titled("pump", "Pump")
                .draft()
                .items(List.of(screws, lid))
                .tools(List.of(pick))
                .steps(List.of(out, off, Step.titled(THIRD, Phase.VERIFY, "Try it")))
                .links(List.of(Link.drawn(FIRST, SECOND), Link.drawn(SECOND, THIRD)))
                .groups(
                        List.of(
                                new StepGroup(
                                        GroupRule.TOGETHER, List.of(FIRST, SECOND), Extras.NONE)))
                .comments(
                        List.of(
                                new Comment(
                                        new CommentId("c7"),
                                        List.of(SECOND),
                                        List.of(SCREWS),
                                        "Kim",
                                        "2026-02-11",
                                        "why?",
                                        Extras.NONE)))
                .procedure();
    }

    @Test
    void aFreshIdIsOneAboveTheHighestNumberEverGiven() {
        assertEquals(new StepId("s8"), FreshIds.step(pump));
        Procedure shorter = new DeleteSteps(Set.of(THIRD)).apply(pump);
        assertEquals(new StepId("s8"), FreshIds.step(shorter));
        Step added = Step.titled(new StepId("s8"), Phase.SERVICE, "Oil it");
        Procedure longer = AddStep.atEnd(added).apply(shorter);
        Procedure gone = new DeleteSteps(Set.of(added.id())).apply(longer);
        assertEquals(new StepId("s9"), FreshIds.step(gone));
        assertEquals(new ItemId("f8"), FreshIds.item(pump, pump.item(SCREWS)));
        assertEquals(new ItemId("p8"), FreshIds.item(pump, pump.item(LID)));
    }

    @Test
    void aStepTypedBelowAnotherStandsAfterItAndIsLinkedAsTold() {
        Step added = Step.titled(new StepId("s8"), Phase.TEARDOWN, "Gasket out");
        Procedure after =
                new AddStep(added, Optional.of(FIRST), Optional.of(LinkOrigin.AS_TOLD)).apply(pump);
        assertEquals(2, after.pageNumber(added.id()));
        assertEquals(3, after.pageNumber(SECOND));
        assertEquals(
                new Link(FIRST, added.id(), LinkOrigin.AS_TOLD, Extras.NONE), after.links().get(2));
    }

    @Test
    void aRenamedStepKeepsItsIdAndGoesBackToWritten() {
        Step renamed = new RenameStep(FIRST, "  Lid screws out ").apply(pump).step(FIRST);
        assertEquals("Lid screws out", renamed.title());
        assertEquals(Standing.WRITTEN, renamed.standing());
        assertSame(pump, new RenameStep(FIRST, "Screws out").apply(pump));
    }

    @Test
    void aChangedStepGoesBackToWrittenUnlessItsStandingIsWhatChanges() {
        Step retold = pump.step(FIRST).draft().text("Take out 4 screws.").step();
        assertEquals(
                Standing.WRITTEN,
                new ChangeStep(retold, "Change text").apply(pump).step(FIRST).standing());
        Standing walked = new Standing(Trial.WALKED_THROUGH, "Kim", "", "2026-02-12");
        Step tried = pump.step(FIRST).draft().standing(walked).step();
        assertEquals(
                walked,
                new ChangeStep(tried, "Change standing").apply(pump).step(FIRST).standing());
    }

    @Test
    void movingOnTheCanvasChangesNeitherPageOrderNorStanding() {
        Optional<CanvasPoint> place = Optional.of(new CanvasPoint(40, 80));
        Procedure after = new PlaceSteps(Map.of(FIRST, place)).apply(pump);
        assertEquals(place, after.step(FIRST).place());
        assertEquals(pump.step(FIRST).standing(), after.step(FIRST).standing());
        assertEquals(1, after.pageNumber(FIRST));
        assertSame(pump.step(SECOND), after.step(SECOND));
    }

    @Test
    void deletedStepsTakeTheirLinksAndSmallGroupsWithThem() {
        Procedure after = new DeleteSteps(Set.of(SECOND)).apply(pump);
        assertEquals(List.of(FIRST, THIRD), after.steps().stream().map(Step::id).toList());
        assertEquals(List.of(), after.links());
        assertEquals(List.of(), after.groups());
        assertEquals(List.of(), after.comments().get(0).steps());
        assertEquals("Delete step", new DeleteSteps(Set.of(SECOND)).name());
    }

    @Test
    void movingEarlierSwapsWithTheStepAbove() {
        Procedure after = new MoveInPageOrder(SECOND, true).apply(pump);
        assertEquals(1, after.pageNumber(SECOND));
        assertSame(after, new MoveInPageOrder(SECOND, true).apply(after));
    }

    @Test
    void aLinkIsDrawnOnce() {
        assertSame(pump, new AddLink(Link.drawn(FIRST, SECOND)).apply(pump));
        Procedure after = new AddLink(Link.drawn(FIRST, THIRD)).apply(pump);
        assertEquals(3, after.links().size());
        Procedure back = new DeleteLinks(Set.of(new LinkEnds(FIRST, THIRD))).apply(after);
        assertEquals(pump, back);
    }

    @Test
    void aLoopIsLetInButNoLinkOfAStepToItself() {
        assertEquals(3, new AddLink(Link.drawn(THIRD, FIRST)).apply(pump).links().size());
        assertThrows(IllegalArgumentException.class, () -> Link.drawn(FIRST, FIRST));
    }

    @Test
    void aDeletedItemTakesItsActionsAndMentionsWithIt() {
        Procedure after = new DeleteItem(SCREWS).apply(pump);
        assertEquals(List.of(), after.step(FIRST).actions());
        assertEquals(List.of(), ((Part) after.item(LID)).heldBy());
        assertEquals(List.of(), after.comments().get(0).items());
        assertEquals(1, after.items().size());
    }

    @Test
    void aToolTakenOffTheListIsUsedByNoStep() {
        Procedure after = new SetTools(List.of()).apply(pump);
        assertEquals(Optional.empty(), after.step(SECOND).tool());
        assertSame(pump.step(FIRST), after.step(FIRST));
    }

    @Test
    void severalEditsAreOne() {
        Edits both =
                new Edits(
                        "Tidy up",
                        List.of(new RenameStep(FIRST, "Out"), new DeleteSteps(Set.of(THIRD))));
        assertEquals("Tidy up", both.name());
        assertEquals(2, both.apply(pump).steps().size());
        assertEquals("Out", both.apply(pump).step(FIRST).title());
    }

    @Test
    void noEditMakesABrokenDocument() {
        StepId nowhere = new StepId("s99");
        assertThrows(
                IllegalArgumentException.class,
                () -> new AddLink(Link.drawn(FIRST, nowhere)).apply(pump));
        assertThrows(
                IllegalArgumentException.class, () -> AddStep.atEnd(pump.step(FIRST)).apply(pump));
        Step naming =
                pump.step(FIRST)
                        .draft()
                        .actions(List.of(Action.of(Verb.REMOVE, new ItemId("f99"), 1)))
                        .step();
        assertThrows(IllegalArgumentException.class, () -> new ChangeStep(naming, "x").apply(pump));
        assertThrows(IllegalArgumentException.class, () -> Action.of(Verb.REMOVE, SCREWS, 0));
    }
}
