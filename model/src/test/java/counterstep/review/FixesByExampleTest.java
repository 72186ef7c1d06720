package counterstep.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.model.Action;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.testing.AnyProcedure;
import counterstep.testing.Found;
import counterstep.testing.PartFacts;
import counterstep.testing.RandomProcedure;
import counterstep.testing.Screws;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Small procedures with one fault, the name of its fix, and what stands there then. */
final class FixesByExampleTest {
    /** The one fault's fix applied; nothing is found then. */
    private static Procedure mended(String name, Sketch sketch) {
        Procedure procedure = sketch.procedure();
        Facts facts = Facts.of(procedure);
        Review review = Review.of(facts);
        assertEquals(1, review.findings().size(), () -> Found.in(procedure).toString());
        Finding finding = review.findings().get(0);
        Fix fix = Fixes.of(facts, review).of(finding).orElseThrow();
        assertEquals(name, fix.name());
        Procedure after = fix.edit().apply(procedure);
        assertEquals(List.of(), Found.in(after));
        return after;
    }

    private static List<String> actions(Procedure procedure) {
        return procedure.steps().stream().map(FixesByExampleTest::actions).toList();
    }

    private static String actions(Step step) {
        return String.join("; ", step.actions().stream().map(FixesByExampleTest::said).toList());
    }

    private static String said(Action action) {
        String item = action.item().map(id -> " " + id + " " + action.count()).orElse("");
        return action.verb().word() + item + (action.fingerTight() ? " finger-tight" : "");
    }

    private static Sketch back(Sketch down, String... lines) {
        return down.phase(Phase.REASSEMBLY).steps(lines);
    }

    private static Sketch tried(Sketch sketch) {
        return sketch.phase(Phase.VERIFY).step("check");
    }

    @Test
    void tooFewBackIsSetToTheWholeSet() {
        Sketch sketch = Sketch.of().screws("f1", 5).step("remove f1");
        assertEquals(
                List.of("remove f1 5", "reinstall f1 5", "check"),
                actions(mended("Set to 5", tried(back(sketch, "reinstall f1 4")))));
    }

    @Test
    void whereAllGoBackAllAreTakenOff() {
        Sketch sketch = Sketch.of().screws("f1", 5).step("remove f1 4");
        assertEquals(
                List.of("remove f1 5", "reinstall f1 5", "check"),
                actions(mended("Set to 5", tried(back(sketch, "reinstall f1")))));
    }

    @Test
    void whereMoreGoBackThanCameOutFewerGoBack() {
        Sketch sketch = Sketch.of().screws("f1", 5).step("remove f1 2");
        assertEquals(
                List.of("remove f1 2", "reinstall f1 2", "check"),
                actions(mended("Set to 2", tried(back(sketch, "reinstall f1 3")))));
    }

    @Test
    void seatedFingerTightIsTightenedInAStepAfter() {
        Sketch sketch = Sketch.of().screws("f1", 2).step("remove f1");
        assertEquals(
                List.of("remove f1 2", "reinstall f1 2 finger-tight", "tighten f1 2", "check"),
                actions(mended("Draw it", tried(back(sketch, "reinstall f1 finger-tight")))));
    }

    @Test
    void aPlugLeftOpenIsClosedBeforeTheCoverThatHidesIt() {
        Sketch sketch =
                Sketch.of()
                        .connectors("c1", 1)
                        .part("p1", "", "", "c1")
                        .steps("remove p1", "disconnect c1");
        assertEquals(
                List.of(
                        "remove p1 1",
                        "disconnect c1 1",
                        "reconnect c1 1",
                        "reinstall p1 1",
                        "check"),
                actions(mended("Draw it", tried(back(sketch, "reinstall p1")))));
    }

    @Test
    void whatIsMissingIsAddedToTheStepThatPutsTheRestBack() {
        Sketch sketch =
                Sketch.of().screws("f1", 2).part("p1", "f1", "", "").step("remove f1; remove p1");
        assertEquals(
                List.of("remove f1 2; remove p1 1", "reinstall p1 1; reinstall f1 2", "check"),
                actions(mended("Draw it", tried(back(sketch, "reinstall f1")))));
    }

    @Test
    void theStripThatWasForgottenIsLaidBeforeThePartThatIsOnAlready() {
        Sketch sketch =
                Sketch.of().joint("j1").part("p1", "j1", "", "").steps("release j1", "remove p1");
        assertEquals(
                List.of(
                        "release j1 1",
                        "remove p1 1",
                        "lay j1 1; reinstall p1 1",
                        "press j1 1",
                        "check"),
                actions(mended("Draw it", tried(back(sketch, "reinstall p1")))));
    }

    @Test
    void theOldOneIsThrownAwayWhereTheNewOneIsFitted() {
        Sketch sketch = Sketch.of().part("p1").step("remove p1");
        assertEquals(
                List.of("remove p1 1", "discard p1 1; fit new p1 1", "check"),
                actions(mended("Discard the old", tried(back(sketch, "fit new p1")))));
    }

    @Test
    void screwsForOneUseAreFittedNew() {
        Sketch sketch = Sketch.of().item(Screws.oneTime("f1", 2)).step("remove f1");
        assertEquals(
                List.of("remove f1 2", "discard f1 2; fit new f1 2", "check"),
                actions(mended("Fit a new one", tried(back(sketch, "reinstall f1")))));
    }

    @Test
    void aSettingIsRestoredAfterWhatItBelongsToIsOn() {
        Sketch sketch = Sketch.of().part("p1").setting("g1", "p1").steps("note g1", "remove p1");
        assertEquals(
                List.of("note g1 1", "remove p1 1", "reinstall p1 1", "restore g1 1", "check"),
                actions(mended("Draw it", tried(back(sketch, "reinstall p1")))));
    }

    @Test
    void aValueThatIsRestoredIsNotedBeforeAnythingDisturbsIt() {
        Sketch sketch = Sketch.of().part("p1").setting("g1", "p1").steps("check", "remove p1");
        assertEquals(
                List.of(
                        "check",
                        "note g1 1",
                        "remove p1 1",
                        "reinstall p1 1",
                        "restore g1 1",
                        "check"),
                actions(
                        mended(
                                "Note it first",
                                tried(back(sketch, "reinstall p1", "restore g1")))));
    }

    @Test
    void aValueThatIsNotedTooLateIsNotedEarlier() {
        Sketch sketch =
                Sketch.of().part("p1").setting("g1", "p1").steps("check", "remove p1", "note g1");
        assertEquals(
                List.of(
                        "check",
                        "note g1 1",
                        "remove p1 1",
                        "reinstall p1 1",
                        "restore g1 1",
                        "check"),
                actions(
                        mended(
                                "Note it first",
                                tried(back(sketch, "reinstall p1", "restore g1")))));
    }

    @Test
    void withinAStepItIsNotedFirst() {
        Sketch sketch = Sketch.of().part("p1").setting("g1", "p1").step("remove p1; note g1");
        assertEquals(
                List.of("note g1 1; remove p1 1", "reinstall p1 1", "restore g1 1", "check"),
                actions(
                        mended(
                                "Note it first",
                                tried(back(sketch, "reinstall p1", "restore g1")))));
    }

    @Test
    void aValueThatNobodyNotesOrRestoresIsNotedAndRestored() {
        Sketch sketch = Sketch.of().part("p1").setting("g1", "p1").step("remove p1");
        assertEquals(
                List.of("note g1 1", "remove p1 1", "reinstall p1 1", "restore g1 1", "check"),
                actions(mended("Note it first", tried(back(sketch, "reinstall p1")))));
    }

    @Test
    void powerIsRestoredAfterAllThatItFeeds() {
        Sketch sketch =
                Sketch.of()
                        .connectors("c1", 1)
                        .item(PartFacts.source("e1", "c1", "", "", 0))
                        .steps("isolate e1", "disconnect c1");
        assertEquals(
                List.of(
                        "isolate e1 1",
                        "disconnect c1 1",
                        "reconnect c1 1",
                        "restore power e1 1",
                        "check"),
                actions(mended("Draw it", tried(back(sketch, "reconnect c1")))));
    }

    @Test
    void whatNobodyTriesIsTriedAtTheEnd() {
        Procedure after =
                mended(
                        "Add the test",
                        back(Sketch.of().screws("f1", 1).step("remove f1"), "reinstall f1"));
        assertEquals(List.of("remove f1 1", "reinstall f1 1", "check"), actions(after));
        assertEquals(Phase.VERIFY, after.steps().get(2).phase());
    }

    @Test
    void noDocumentMakesAFixStumble() {
        int offered = 0;
        for (long seed = 0; seed < 150; seed++) {
            for (Procedure any :
                    List.of(AnyProcedure.of(seed), RandomProcedure.withSteps(6, seed))) {
                Facts facts = Facts.of(any);
                Review review = Review.of(facts);
                Fixes fixes = Fixes.of(facts, review);
                offered +=
                        review.findings().stream()
                                .mapToInt(f -> fixes.of(f).isPresent() ? 1 : 0)
                                .sum();
            }
        }
        assertTrue(offered > 100, offered + " offered");
    }
}
