package counterstep.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.edit.AddLink;
import counterstep.edit.AddStep;
import counterstep.edit.Edit;
import counterstep.edit.Edits;
import counterstep.edit.MoveInPageOrder;
import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.ItemId;
import counterstep.model.Link;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepDraft;
import counterstep.model.StepId;
import counterstep.model.Verb;
import counterstep.testing.AnyProcedure;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class PreviewTest {
    private final Procedure before =
            Sketch.of()
                    .inAnyOrder()
                    .screws("f1", 5)
                    .part("p1")
                    .steps("remove f1", "take away p1", "bring in p1")
                    .procedure();

    private List<String> told(Edit edit) {
        return Preview.of(before, edit.apply(before));
    }

    private Step step(String id) {
        return before.step(new StepId(id));
    }

    @Test
    void aNewStepIsToldWithItsPlaceAndItsActions() {
        Step added =
                new StepDraft(new StepId("s9"), Phase.REASSEMBLY, "Screws in")
                        .actions(List.of(Action.of(Verb.REINSTALL, new ItemId("f1"), 5)))
                        .step();
        assertEquals(
                List.of("New step 4, Screws in: reinstall 5 f1 screws."),
                told(AddStep.atEnd(added)));
    }

    @Test
    void aCountThatDiffersIsToldWithTheOneThatStoodThere() {
        Action four = Action.of(Verb.REMOVE, new ItemId("f1"), 4);
        Procedure after = before.withStep(step("s1").draft().actions(List.of(four)).step());
        assertEquals(
                List.of("Step 1, remove f1: remove 4 f1 screws, not 5."),
                Preview.of(before, after));
    }

    @Test
    void onlyTheStepThatWasMovedIsToldAsMoved() {
        Edit earlier = new MoveInPageOrder(new StepId("s3"), true);
        assertEquals(
                List.of("Step 3, bring in p1 becomes step 1."),
                told(new Edits("Twice", List.of(earlier, earlier))));
    }

    @Test
    void aNewLinkIsToldByItsSteps() {
        assertEquals(
                List.of("New link: step 1, remove f1, before step 2, take away p1."),
                told(new AddLink(Link.drawn(new StepId("s1"), new StepId("s2")))));
    }

    @Test
    void aTrayIsToldByTheItemThatIsKeptInIt() {
        FastenerSet set = (FastenerSet) before.item(new ItemId("f1"));
        FastenerSet kept =
                new FastenerSet(
                        set.id(),
                        set.name(),
                        set.quantity(),
                        set.form(),
                        set.drive(),
                        set.head(),
                        set.thread(),
                        set.length(),
                        set.propertyClass(),
                        set.seat(),
                        set.torque(),
                        set.tightening(),
                        set.locking(),
                        set.captive(),
                        set.renew(),
                        "B",
                        set.note(),
                        set.extras());
        Procedure after =
                before.draft().items(List.of(kept, before.item(new ItemId("p1")))).procedure();
        assertEquals(List.of("F1 screws: in tray “B”."), Preview.of(before, after));
    }

    @Test
    void nothingIsToldWhereNothingDiffersAndSomethingWhereAnythingDoes() {
        for (long seed = 0; seed < 50; seed++) {
            Procedure some = AnyProcedure.of(seed);
            assertEquals(List.of(), Preview.of(some, some));
            Optional<Step> first = some.steps().stream().findFirst();
            if (first.isPresent()) {
                String title = first.get().title() + " again";
                Procedure after = some.withStep(first.get().draft().title(title).step());
                assertEquals(1, Preview.of(some, after).size(), "seed " + seed);
            }
        }
    }
}
