package counterstep.implied;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.LinkEnds;
import counterstep.model.StepId;
import counterstep.testing.PartFacts;
import counterstep.testing.Screws;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class ImpliedLinksTest {
    private static List<String> proposed(Sketch sketch) {
        return lines(ImpliedLinks.of(sketch.procedure()).proposals());
    }

    private static List<String> lines(List<ImpliedLink> links) {
        return links.stream()
                .map(
                        link ->
                                "%s %s %s"
                                        .formatted(
                                                link.ends().before(),
                                                link.ends().after(),
                                                link.reason()))
                .sorted()
                .toList();
    }

    @Test
    void aPartLeavesOnceReleasedAndIsThereBeforeItsHolderGoesBack() {
        assertEquals(
                List.of(
                        "s1 s2 P1 part is held by f1 screws.",
                        "s2 s3 P1 part: remove before reinstall.",
                        "s3 s4 P1 part is held by f1 screws."),
                proposed(
                        Sketch.of()
                                .inAnyOrder()
                                .screws("f1", 2)
                                .part("p1", "f1", "", "")
                                .steps("remove f1", "remove p1", "reinstall p1", "reinstall f1")));
    }

    @Test
    void loosenedScrewsReleaseAPartOnlyWhereLooseIsEnough() {
        Sketch sketch = Sketch.of().inAnyOrder().screws("f1", 2).screws("f2", 1);
        sketch.item(PartFacts.part("p1", 1, "~f1 f2", "", ""));
        assertEquals(
                List.of(
                        "s1 s3 P1 part is held by f1 screws.",
                        "s2 s3 P1 part is held by f2 screws."),
                proposed(sketch.steps("loosen f1", "remove f2", "move aside p1")));
    }

    @Test
    void aCaptiveScrewReleasesItsPartWhenLoose() {
        Sketch sketch =
                Sketch.of().inAnyOrder().item(Screws.captive("f1", 2)).part("p1", "f1", "", "");
        assertEquals(
                List.of(
                        "s1 s2 P1 part is held by f1 screws.",
                        "s2 s3 P1 part: move aside before return.",
                        "s3 s4 P1 part is held by f1 screws."),
                proposed(sketch.steps("loosen f1", "move aside p1", "return p1", "tighten f1")));
    }

    @Test
    void aTetheredPartGoesAwayOnceItsLeadIsOpenButMayBeAsideBefore() {
        assertEquals(
                List.of(
                        "s1 s3 P1 part: move aside before take away.",
                        "s2 s3 P1 part is tethered by c1 plugs.",
                        "s3 s4 P1 part: take away before bring in.",
                        "s4 s5 P1 part is tethered by c1 plugs.",
                        "s4 s6 P1 part: bring in before return."),
                proposed(
                        Sketch.of()
                                .inAnyOrder()
                                .connectors("c1", 1)
                                .part("p1", "", "c1", "")
                                .steps(
                                        "move aside p1",
                                        "disconnect c1",
                                        "take away p1",
                                        "bring in p1",
                                        "reconnect c1",
                                        "return p1")));
    }

    @Test
    void whatACoverHidesIsWorkedOnAndFinishedWhileItIsOff() {
        assertEquals(
                List.of(
                        "s1 s2 P1 part covers c1 plugs.",
                        "s1 s3 P1 part covers f1 screws.",
                        "s2 s4 C1 plugs: disconnect before reconnect.",
                        "s3 s5 F1 screws: loosen before tighten.",
                        "s4 s6 P1 part covers c1 plugs.",
                        "s5 s6 P1 part covers f1 screws."),
                proposed(
                        Sketch.of()
                                .inAnyOrder()
                                .connectors("c1", 1)
                                .screws("f1", 2)
                                .part("p1", "", "", "c1 f1")
                                .steps(
                                        "move aside p1",
                                        "disconnect c1",
                                        "loosen f1",
                                        "reconnect c1",
                                        "tighten f1",
                                        "return p1")));
    }

    @Test
    void workComesBetweenTheProofAndThePowerAndAPoweredTestIsExempt() {
        Sketch sketch = Sketch.of().inAnyOrder().connectors("c1", 1);
        sketch.item(PartFacts.source("e1", "c1", "", "", 60));
        assertEquals(
                List.of(
                        "s1 s2 E1 power is isolated, waited for, then proved dead.",
                        "s2 s3 E1 power is isolated, waited for, then proved dead.",
                        "s3 s4 E1 power feeds c1 plugs.",
                        "s4 s5 C1 plugs: disconnect before reconnect.",
                        "s5 s6 E1 power feeds c1 plugs."),
                proposed(
                        sketch.steps(
                                "isolate e1",
                                "wait wait 60",
                                "prove dead e1",
                                "disconnect c1",
                                "reconnect c1",
                                "restore power e1",
                                "check c1 1 test")));
    }

    @Test
    void openingTheConnectorOfASourceIsolatesWhatHangsOnItToo() {
        Sketch sketch = Sketch.of().inAnyOrder().connectors("c1", 2).screws("f1", 1);
        sketch.item(PartFacts.source("e1", "", "c1", "", 0));
        sketch.item(PartFacts.source("e2", "f1", "", "e1", 0));
        assertEquals(
                List.of(
                        "s1 s3 E2 power feeds f1 screws.",
                        "s2 s3 E2 power feeds f1 screws.",
                        "s3 s4 F1 screws: remove before reinstall.",
                        "s4 s5 E2 power feeds f1 screws."),
                proposed(
                        sketch.steps(
                                "disconnect c1 1",
                                "disconnect c1 1",
                                "remove f1",
                                "reinstall f1",
                                "reconnect c1")));
    }

    @Test
    void aValueIsNotedBeforeItIsDisturbedAndRestoredOnceAllIsBack() {
        assertEquals(
                List.of(
                        "s1 s2 G1 height belongs to p1 part.",
                        "s2 s3 P1 part: move aside before return.",
                        "s3 s4 G1 height belongs to p1 part."),
                proposed(
                        Sketch.of()
                                .inAnyOrder()
                                .part("p1")
                                .setting("g1", "p1")
                                .steps("note g1", "move aside p1", "return p1", "restore g1")));
    }

    @Test
    void aPuttingBackBelongsToTheLatestRemovalStillOpen() {
        assertEquals(
                List.of(
                        "s1 s4 F1 screws: remove before reinstall.",
                        "s2 s3 F1 screws: remove before reinstall."),
                proposed(
                        Sketch.of()
                                .inAnyOrder()
                                .screws("f1", 4)
                                .steps(
                                        "remove f1 2",
                                        "remove f1 2",
                                        "reinstall f1 2",
                                        "reinstall f1 2")));
    }

    @Test
    void theOldIsThrownAwayBeforeTheNewIsFitted() {
        assertEquals(
                List.of(
                        "s1 s2 F1 screws: remove before discard.",
                        "s2 s3 F1 screws: discard before fit new."),
                proposed(
                        Sketch.of()
                                .inAnyOrder()
                                .screws("f1", 2)
                                .steps("remove f1", "discard f1", "fit new f1")));
    }

    @Test
    void aJointIsLaidWhileItsPartIsOff() {
        assertEquals(
                List.of(
                        "s1 s2 P1 part is held by j1 joint.",
                        "s2 s3 J1 joint is laid while p1 part is off.",
                        "s3 s4 J1 joint is laid while p1 part is off.",
                        "s4 s5 P1 part is held by j1 joint."),
                proposed(
                        Sketch.of()
                                .inAnyOrder()
                                .joint("j1")
                                .part("p1", "j1", "", "")
                                .steps(
                                        "release j1",
                                        "remove p1",
                                        "lay j1",
                                        "reinstall p1",
                                        "press j1")));
    }

    @Test
    void whatIsDrawnOrFollowsFromTheDrawingIsNotProposed() {
        Sketch sketch =
                Sketch.of()
                        .inAnyOrder()
                        .screws("f1", 2)
                        .part("p1", "f1", "", "")
                        .steps("remove f1", "check", "remove p1", "reinstall p1", "reinstall f1")
                        .link(1, 2)
                        .link(2, 3)
                        .link(4, 5);
        assertEquals(List.of("s3 s4 P1 part: remove before reinstall."), proposed(sketch));
        assertEquals(
                Optional.of("P1 part is held by f1 screws."),
                ImpliedLinks.of(sketch.procedure())
                        .reason(new LinkEnds(new StepId("s1"), new StepId("s3"))));
    }

    @Test
    void whatTheDrawingTurnsRoundIsLeftOutAndTold() {
        ImpliedLinks links =
                ImpliedLinks.of(
                        Sketch.of()
                                .inAnyOrder()
                                .screws("f1", 2)
                                .part("p1", "f1", "", "")
                                .steps("remove f1", "remove p1", "reinstall p1", "reinstall f1")
                                .link(2, 1)
                                .procedure());
        assertEquals(List.of("s1 s2 P1 part is held by f1 screws."), lines(links.contradicted()));
        assertEquals(
                List.of(
                        "s1 s4 F1 screws: remove before reinstall.",
                        "s2 s3 P1 part: remove before reinstall.",
                        "s3 s4 P1 part is held by f1 screws."),
                lines(links.proposals()));
    }

    @Test
    void whatPageOrderHasWrongIsNotProposed() {
        assertEquals(
                List.of(),
                proposed(
                        Sketch.of()
                                .inAnyOrder()
                                .screws("f1", 2)
                                .part("p1", "f1", "", "")
                                .steps("remove p1", "remove f1")));
    }
}
