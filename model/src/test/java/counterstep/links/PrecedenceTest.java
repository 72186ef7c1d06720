package counterstep.links;

import static counterstep.testing.Networks.id;
import static counterstep.testing.Networks.ids;
import static counterstep.testing.Networks.linked;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.Link;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.testing.Networks;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class PrecedenceTest {
    private static LongStream starts() {
        return LongStream.range(0, 200);
    }

    @Test
    void aChainOfLinksPutsItsFirstBeforeItsLast() {
        Precedence precedence = Precedence.of(linked("a b c d", "a-b", "b-c"));
        assertTrue(precedence.before(id("a"), id("c")));
        assertFalse(precedence.before(id("c"), id("a")));
        assertFalse(precedence.before(id("a"), id("a")));
        assertFalse(precedence.before(id("a"), id("d")));
        assertTrue(precedence.before(0, 2));
    }

    @Test
    void directNeighboursComeInPageOrderAndALinkDrawnTwiceCountsOnce() {
        Precedence precedence = Precedence.of(linked("a b c d", "a-d", "a-b", "a-d", "b-d", "c-d"));
        assertEquals(ids("b d"), precedence.directlyAfter(id("a")));
        assertEquals(ids("a b c"), precedence.directlyBefore(id("d")));
        assertEquals(List.of(), precedence.directlyBefore(id("a")));
    }

    @Test
    void pageOrderIsTheNearestOrderWhereItKeepsTheLinks() {
        Precedence precedence = Precedence.of(linked("a b c d", "a-c", "b-d"));
        assertEquals(ids("a b c d"), precedence.topological());
        assertEquals(List.of(), precedence.againstPageOrder());
    }

    @Test
    void aStepThatMustWaitComesAsSoonAsItMay() {
        Precedence precedence = Precedence.of(linked("a b c d", "c-a", "b-d"));
        assertEquals(ids("b c a d"), precedence.topological());
        assertEquals(List.of(Link.drawn(id("c"), id("a"))), precedence.againstPageOrder());
    }

    @Test
    void aLoopIsNamedFromItsFirstStepInPageOrderAlongItsLinks() {
        Precedence precedence =
                Precedence.of(linked("a b c d e", "a-b", "d-b", "b-e", "e-d", "c-d", "d-c"));
        assertEquals(Optional.of(ids("b e d")), precedence.loop());
        assertTrue(precedence.before(id("b"), id("b")));
        assertTrue(precedence.before(id("a"), id("c")));
        assertFalse(precedence.before(id("a"), id("a")));
        assertThrows(IllegalStateException.class, precedence::topological);
    }

    @Test
    void twoStepsBeforeEachOtherAreALoop() {
        Precedence precedence = Precedence.of(linked("a b", "b-a", "a-b"));
        assertEquals(Optional.of(ids("a b")), precedence.loop());
    }

    @Test
    void anEmptyDocumentHasNoOrderToKeep() {
        Precedence precedence = Precedence.of(Procedure.titled("empty", "Empty"));
        assertEquals(List.of(), precedence.topological());
        assertEquals(Optional.empty(), precedence.loop());
    }

    @Test
    void anUnknownStepIsRefused() {
        Precedence precedence = Precedence.of(linked("a"));
        assertThrows(
                IllegalArgumentException.class, () -> precedence.before(id("a"), id("nowhere")));
    }

    @ParameterizedTest
    @MethodSource("starts")
    void beforeIsWhatFollowingTheLinksFinds(long start) {
        Procedure procedure = Networks.randomWithLoops(9, 0.2, start);
        Precedence precedence = Precedence.of(procedure);
        for (Step earlier : procedure.steps()) {
            Set<StepId> followed = followed(procedure, earlier.id());
            for (Step later : procedure.steps()) {
                assertEquals(
                        followed.contains(later.id()),
                        precedence.before(earlier.id(), later.id()),
                        () -> earlier.id() + " before " + later.id());
            }
        }
    }

    private static Set<StepId> followed(Procedure procedure, StepId from) {
        Set<StepId> found = new HashSet<>();
        List<StepId> open = new ArrayList<>(List.of(from));
        while (!open.isEmpty()) {
            StepId here = open.remove(open.size() - 1);
            for (Link link : procedure.links()) {
                if (link.before().equals(here) && found.add(link.after())) {
                    open.add(link.after());
                }
            }
        }
        return found;
    }

    @ParameterizedTest
    @MethodSource("starts")
    void thereIsALoopOrAnOrderThatKeepsAllLinks(long start) {
        Procedure procedure = Networks.randomWithLoops(8, 0.1, start);
        Precedence precedence = Precedence.of(procedure);
        Optional<List<StepId>> loop = precedence.loop();
        if (loop.isPresent()) {
            assertIsLoop(procedure, loop.get());
            assertThrows(IllegalStateException.class, precedence::topological);
            return;
        }
        List<StepId> order = precedence.topological();
        assertEquals(new HashSet<>(precedence.steps()), new HashSet<>(order));
        assertEquals(precedence.steps().size(), order.size());
        for (Link link : procedure.links()) {
            assertTrue(order.indexOf(link.before()) < order.indexOf(link.after()), link::toString);
        }
    }

    private static void assertIsLoop(Procedure procedure, List<StepId> loop) {
        assertEquals(loop.size(), new HashSet<>(loop).size(), "each step once");
        for (int place = 0; place < loop.size(); place++) {
            StepId before = loop.get(place);
            StepId after = loop.get((place + 1) % loop.size());
            assertTrue(
                    procedure.links().stream()
                            .anyMatch(l -> l.before().equals(before) && l.after().equals(after)),
                    () -> before + " is not linked to " + after);
        }
    }
}
