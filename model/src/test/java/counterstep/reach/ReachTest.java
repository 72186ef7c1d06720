package counterstep.reach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.input.BadInput;
import counterstep.links.Precedence;
import counterstep.model.Index;
import counterstep.model.ItemId;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.store.ProcedureFile;
import counterstep.testing.Found;
import counterstep.testing.PartFacts;
import counterstep.testing.Samples;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Which steps reach a part, by example. */
final class ReachTest {
    private static final Procedure STICK_UNIT =
            ProcedureFile.read(Samples.file(Samples.STICK_UNIT));

    @Test
    void theRightGripNeedsTheShellOffTheCellUnpluggedAndAllOfItBack() {
        Reach reach = Reach.of(STICK_UNIT, Reach.named(STICK_UNIT, List.of("Right grip")));

        List<Integer> expected =
                Stream.of(range(1, 3), range(6, 10), range(14, 14), range(44, 44), range(48, 58))
                        .flatMap(List::stream)
                        .toList();
        assertEquals(expected, numbers(STICK_UNIT, reach));
        assertEquals("right grip needs 21 of 58 steps", reach.summary());
        assertEquals(
                "Orrin C4 radio controller: to reach right grip",
                reach.procedure().titleBlock().title());
        assertEquals("reach-right-grip", reach.fileName());
        assertTrue(
                reach.leftOut()
                        .contains(
                                new LeftOut(
                                        new StepId("s18"),
                                        "cross brace, brace screws stay as they are")));
    }

    @Test
    void eachItemOfASampleIsReachedWithNoErrorThatTheWholeHasNot() {
        for (String sample : List.of(Samples.STICK_UNIT, Samples.SUPPLY_FAN)) {
            Procedure whole = ProcedureFile.read(Samples.file(sample));
            whole.items()
                    .forEach(
                            item -> {
                                Reach reach = Reach.of(whole, Set.of(item.id()));
                                List<String> errors =
                                        Found.in(reach.procedure()).stream()
                                                .filter(line -> !isAboutTools(line))
                                                .toList();
                                assertEquals(List.of(), errors, item.name());
                            });
        }
    }

    /** Less is checked against the rated matings and the tool list where less is done. */
    private static boolean isAboutTools(String line) {
        return line.startsWith("tool-not-used");
    }

    @Test
    void aPartMovedAsideIsNotTakenAwayAsWell() {
        Procedure whole =
                Sketch.of()
                        .screws("f1", 2)
                        .screws("f2", 2)
                        .connectors("c1", 1)
                        .item(PartFacts.part("p1", 1, "f1", "c1", "f2 c1"))
                        .steps("remove f1", "move aside p1", "disconnect c1", "take away p1")
                        .steps("remove f2")
                        .phase(Phase.REASSEMBLY)
                        .steps("reinstall f2", "bring in p1", "reconnect c1", "return p1")
                        .steps("reinstall f1")
                        .phase(Phase.VERIFY)
                        .step("check")
                        .procedure();

        Reach reach = Reach.of(whole, Set.of(new ItemId("f2")));

        assertEquals(List.of(1, 2, 5, 6, 9, 10, 11), numbers(whole, reach));
        assertEquals(List.of(), Found.in(reach.procedure()));
        assertTrue(
                Precedence.of(reach.procedure()).before(new StepId("s2"), new StepId("s5")),
                "the order holds over the gap");
    }

    @Test
    void aDrawnLinkThatNoFactExplainsMakesItsFirstStepNeededOnTheWayInOnly() {
        Sketch sketch =
                Sketch.of()
                        .part("p1")
                        .part("p2")
                        .steps("remove p1", "remove p2")
                        .phase(Phase.REASSEMBLY)
                        .steps("reinstall p2", "reinstall p1");
        Procedure told = sketch.procedure();
        Procedure drawn = sketch.link(1, 2).link(2, 3).link(3, 4).procedure();

        assertEquals(List.of(2, 3), numbers(told, Reach.of(told, Set.of(new ItemId("p2")))));
        assertEquals(
                List.of(1, 2, 3, 4), numbers(drawn, Reach.of(drawn, Set.of(new ItemId("p2")))));
        assertEquals(List.of(1, 4), numbers(drawn, Reach.of(drawn, Set.of(new ItemId("p1")))));
    }

    @Test
    void whatIsNotExchangedOnTheWayIsNotAskedForNew() {
        Procedure whole =
                Sketch.of()
                        .screws("f1", 2)
                        .item(PartFacts.renewed(PartFacts.part("p1", 1, "", "", "f1")))
                        .steps("move aside p1", "remove f1")
                        .phase(Phase.REASSEMBLY)
                        .steps("reinstall f1", "return p1")
                        .phase(Phase.TEARDOWN)
                        .steps("remove p1; discard p1")
                        .phase(Phase.REASSEMBLY)
                        .steps("fit new p1")
                        .phase(Phase.VERIFY)
                        .step("check")
                        .procedure();

        Reach reach = Reach.of(whole, Set.of(new ItemId("f1")));

        assertEquals(List.of(1, 2, 3, 4, 7), numbers(whole, reach));
        assertEquals(List.of(), Found.in(reach.procedure()));
    }

    @Test
    void whatNobodyTouchesIsReachedOnceItsCoverIsOff() {
        Procedure whole = ProcedureFile.read(Samples.file(Samples.SUPPLY_FAN));
        Reach reach = Reach.of(whole, Reach.named(whole, List.of("control board")));
        assertEquals(List.of(1, 2, 3, 12, 13, 14), without(numbers(whole, reach), 4, 5));
    }

    @Test
    void anItemThatIsNotThereIsRefused() {
        BadInput refused =
                assertThrows(
                        BadInput.class, () -> Reach.named(STICK_UNIT, List.of("left-hand grip")));
        assertEquals("no item 'left-hand grip'", refused.what());
    }

    private static List<Integer> without(List<Integer> numbers, int... some) {
        return numbers.stream()
                .filter(number -> IntStream.of(some).noneMatch(one -> one == number))
                .toList();
    }

    private static List<Integer> range(int from, int to) {
        return IntStream.rangeClosed(from, to).boxed().toList();
    }

    private static List<Integer> numbers(Procedure whole, Reach reach) {
        Index index = Index.of(whole);
        return reach.steps().stream().map(index::number).toList();
    }
}
