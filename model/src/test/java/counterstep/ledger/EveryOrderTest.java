package counterstep.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.links.Precedence;
import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.LinkEnds;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.testing.PartFacts;
import counterstep.testing.RandomProcedure;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Small drawings of which one can see what goes wrong. */
final class EveryOrderTest {
    private static EveryOrder of(Sketch sketch) {
        return of(sketch.procedure());
    }

    private static EveryOrder of(Procedure procedure) {
        return EveryOrder.of(Deeds.of(Index.of(procedure)), Precedence.of(procedure));
    }

    private static List<String> found(EveryOrder every) {
        return every.violations().stream()
                .map(one -> one + " " + line(every.witness(one)))
                .map(line -> line.replaceAll("Violation|Optional|\\[|]|step=|action=|kind=", ""))
                .toList();
    }

    private static String line(Witness witness) {
        return witness.first() + " then " + witness.then() + " " + witness.readings();
    }

    @Test
    void whatIsLinkedAsToldGoesWrongInNoOrder() {
        Sketch sketch = Sketch.of().screws("f1", 4).steps("remove f1", "reinstall f1", "check");
        assertEquals(List.of(), of(sketch).violations());
    }

    @Test
    void aPuttingBackThatMayComeFirstFindsNothingToPutBack() {
        Sketch sketch = Sketch.of().screws("f1", 4).steps("remove f1", "reinstall f1").inAnyOrder();
        assertEquals(List.of("s2, 0, PRECONDITION, about=f1  then s2 "), found(of(sketch)));
    }

    /** Four must be out; s3 puts back one, s9 three: the smallest set spoils with s3 alone. */
    @Test
    void theWitnessIsASmallestSetNotTheWorst() {
        Sketch sketch =
                Sketch.of()
                        .screws("f1", 4)
                        .part("p1", "f1", "", "")
                        .steps("remove f1", "move aside p1", "reinstall f1 1")
                        .steps("check", "check", "check", "check", "check", "reinstall f1 3")
                        .link(1, 2)
                        .link(1, 3)
                        .link(1, 4)
                        .link(4, 5)
                        .link(5, 6)
                        .link(6, 7)
                        .link(7, 8)
                        .link(8, 9);
        assertTrue(
                found(of(sketch)).stream()
                        .anyMatch(line -> line.startsWith("s2, 0, HOLD, about=f1 s1, s3 then s2")),
                () -> found(of(sketch)).toString());
    }

    /** Removing takes loose ones first, so how many stay loose depends on the order. */
    @Test
    void looseOnesAreWalkedAndTheOrderThatLeavesThemIsShown() {
        Sketch sketch =
                Sketch.of()
                        .screws("f1", 4)
                        .steps("loosen f1 2", "remove f1 2", "reinstall f1 2")
                        .link(2, 3);
        EveryOrder every = of(sketch);
        assertEquals(1, every.violations().size());
        Witness witness = every.witness(every.violations().get(0));
        assertTrue(witness.then().isEmpty());
        assertEquals("[s2, s1, s3]", witness.first().toString());
        assertEquals(2, ((FastenerState) witness.readings().get(2).state()).loose());
    }

    @Test
    void waitingBeforeIsolatingIsNoWait() {
        Sketch sketch =
                Sketch.of()
                        .connectors("c1", 1)
                        .item(PartFacts.source("e1", "c1", "", "", 60, true))
                        .steps("isolate e1", "wait wait 60", "prove dead e1", "disconnect c1")
                        .link(1, 3)
                        .link(2, 3)
                        .link(3, 4);
        EveryOrder every = of(sketch);
        assertEquals("[s2, s1]", every.witness(every.violations().get(0)).first().toString());
        assertEquals(
                List.of(new LinkEnds(step(1), step(2))),
                every.missingLinks(every.violations()).orElseThrow());
    }

    private static StepId step(int number) {
        return new StepId("s" + number);
    }

    @Test
    void whereTheLinksLeadInARingThereIsNoOrder() {
        Sketch sketch = Sketch.of().screws("f1", 1).steps("remove f1", "check").link(1, 2);
        assertEquals(List.of(), of(sketch.link(2, 1)).violations());
    }

    @Test
    void setsLieTogetherWhereSomeOrderLeavesBothOut() {
        Sketch apart =
                Sketch.of()
                        .screws("f1", 2)
                        .screws("f2", 2)
                        .steps("remove f1", "reinstall f1", "remove f2", "reinstall f2");
        ItemId one = new ItemId("f1");
        ItemId other = new ItemId("f2");
        assertTrue(of(apart).together(one, other).isEmpty());
        Witness together = of(apart.link(1, 2).link(3, 4)).together(one, other).orElseThrow();
        assertEquals("[s1, s3]", together.first().toString());
    }

    /** With nothing walked every verdict that was found is still found, and some beyond. */
    @Test
    void theBoundWarnsTooOftenNeverTooSeldom() {
        int exact = 0;
        int bounded = 0;
        for (long seed = 0; seed < 2_000; seed++) {
            Procedure procedure = RandomProcedure.withSteps(2 + (int) (seed % 8), seed);
            Precedence precedence = Precedence.of(procedure);
            Deeds deeds = Deeds.of(Index.of(procedure));
            Set<Violation> found = Set.copyOf(EveryOrder.of(deeds, precedence).violations());
            Set<Violation> doubted =
                    EveryOrder.of(deeds, precedence, 0).violations().stream()
                            .collect(Collectors.toSet());
            exact += found.size();
            bounded += doubted.size();
            assertTrue(doubted.containsAll(found), "seed " + seed);
        }
        assertTrue(bounded < exact * 1.2, exact + " found, " + bounded + " with the bound");
    }
}
