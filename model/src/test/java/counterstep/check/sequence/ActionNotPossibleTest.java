package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.testing.Found;
import counterstep.testing.PartFacts;
import counterstep.testing.Screws;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ActionNotPossibleTest {
    @Test
    void puttingBackBeforeTakingOff() {
        assertEquals(
                List.of(
                        "action-not-possible [s1] [f1] Step 1 cannot reinstall the 2 f1 screws: none is out."),
                Found.in(Sketch.of().screws("f1", 2).steps("reinstall f1", "remove f1")));
    }

    @Test
    void tighteningWhatIsTight() {
        assertEquals(
                List.of(
                        "action-not-possible [s2] [f1] Step 2 cannot tighten 1 of the 3 f1 screws: none is loose."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 3)
                                .steps("remove f1", "reinstall f1; tighten f1 1")));
    }

    @Test
    void captiveScrewsAreOneFaultHoweverOften() {
        assertEquals(
                List.of(
                        "action-not-possible [s1, s2] [f1] Step 1 cannot remove the 2 f1 screws: captive ones are only loosened and tightened."),
                Found.in(
                        Sketch.of()
                                .item(Screws.captive("f1", 2))
                                .steps("remove f1", "reinstall f1")));
    }

    @Test
    void aVerbOfAnotherKind() {
        assertEquals(
                List.of(
                        "action-not-possible [s1] [p1] Step 1 cannot unclip p1 part: that verb does not fit this kind of item."),
                Found.in(Sketch.of().part("p1").steps("unclip p1")));
    }

    @Test
    void asideAndAwayAreTwoThings() {
        assertEquals(
                List.of(
                        "action-not-possible [s2] [p1] Step 2 cannot reinstall p1 part: none is away.",
                        "action-not-possible [s3] [p2] Step 3 cannot return p2 part: none is aside."),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .part("p2")
                                .steps("move aside p1; remove p2", "reinstall p1", "return p2")));
    }

    @Test
    void layingUnderThePart() {
        assertEquals(
                List.of(
                        "action-not-possible [s2] [j1, p1] Step 2 cannot lay j1 joint: p1 part is still on its place."),
                Found.in(
                        Sketch.of()
                                .joint("j1")
                                .part("p1", "j1", "", "")
                                .steps("release j1", "lay j1", "press j1")));
    }

    @Test
    void provingDeadBeforeTheWaitIsOver() {
        assertEquals(
                List.of(
                        "action-not-possible [s2] [e1] Step 2 cannot prove dead e1 power: the wait is 30 s and must be 60 s."),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .item(PartFacts.source("e1", "p1", "", "", 60))
                                .steps(
                                        "isolate e1 1 wait 30",
                                        "prove dead e1",
                                        "check p1",
                                        "restore power e1")));
    }

    @Test
    void restoringBeforeThePartIsBack() {
        assertEquals(
                List.of(
                        "action-not-possible [s3] [g1, p1] Step 3 cannot restore g1 height: p1 part is not in place yet."),
                Found.in(
                        Sketch.of()
                                .part("p1")
                                .setting("g1", "p1")
                                .steps("note g1", "remove p1", "restore g1", "reinstall p1")));
    }

    @Test
    void whatFollowsFromAnEndingIsSilent() {
        assertEquals(
                List.of(
                        "never-put-back [s1, s2] [f1] The 2 f1 screws come out in step 1 and never go back in."),
                Found.in(Sketch.of().screws("f1", 2).steps("remove f1", "tighten f1")));
    }

    @Test
    void isSilentWhereAllIsReady() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .steps(
                                        "loosen f1; remove f1",
                                        "reinstall f1 finger-tight; tighten f1")));
    }
}
