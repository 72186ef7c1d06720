package counterstep.links;

import static counterstep.testing.Networks.id;
import static counterstep.testing.Networks.ids;
import static counterstep.testing.Networks.linked;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.testing.Networks;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.jgrapht.Graph;
import org.jgrapht.alg.TransitiveReduction;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleDirectedGraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class ReductionTest {
    private static LongStream starts() {
        return LongStream.range(0, 300);
    }

    private static Reduction of(Procedure procedure) {
        return Reduction.of(Precedence.of(procedure));
    }

    private static LinkEnds ends(String before, String after) {
        return new LinkEnds(id(before), id(after));
    }

    @Test
    void aLinkPastAStepBetweenFollowsFromTheTwoAroundIt() {
        Reduction reduction = of(linked("a b c", "a-b", "b-c", "a-c"));
        assertEquals(Set.of(ends("a", "c")), reduction.following());
        assertEquals(ids("a b c"), reduction.way(ends("a", "c")));
    }

    @Test
    void theWayGoesAlongLinksThatStay() {
        Reduction reduction = of(linked("a b c d", "a-b", "b-c", "c-d", "a-c", "b-d", "a-d"));
        assertEquals(Set.of(ends("a", "c"), ends("b", "d"), ends("a", "d")), reduction.following());
        assertEquals(ids("a b c d"), reduction.way(ends("a", "d")));
        assertThrows(IllegalArgumentException.class, () -> reduction.way(ends("a", "b")));
    }

    @Test
    void aLinkOnALoopNeverFollows() {
        assertEquals(Set.of(), of(linked("a b c", "a-b", "b-c", "c-a", "a-c")).following());
    }

    @Test
    void twoLinksIntoOneLoopBothStay() {
        assertEquals(Set.of(), of(linked("a b c", "b-c", "c-b", "a-b", "a-c")).following());
    }

    @Test
    void aLinkPastALoopFollows() {
        assertEquals(
                Set.of(ends("a", "d")),
                of(linked("a b c d", "a-b", "b-c", "c-b", "c-d", "a-d")).following());
    }

    @ParameterizedTest
    @MethodSource("starts")
    void withoutLoopsItIsTheReductionOfAnIndependentLibrary(long start) {
        Procedure procedure = Networks.random(12, 0.35, start);
        Graph<StepId, DefaultEdge> graph = new SimpleDirectedGraph<>(DefaultEdge.class);
        procedure.steps().forEach(step -> graph.addVertex(step.id()));
        procedure.links().forEach(link -> graph.addEdge(link.before(), link.after()));
        TransitiveReduction.INSTANCE.reduce(graph);

        assertEquals(
                graph.edgeSet().stream()
                        .map(
                                edge ->
                                        new LinkEnds(
                                                graph.getEdgeSource(edge),
                                                graph.getEdgeTarget(edge)))
                        .collect(Collectors.toSet()),
                kept(procedure, of(procedure)));
    }

    private static Set<LinkEnds> kept(Procedure procedure, Reduction reduction) {
        Set<LinkEnds> kept = procedure.links().stream().map(Link::ends).collect(Collectors.toSet());
        kept.removeAll(reduction.following());
        return kept;
    }

    @ParameterizedTest
    @MethodSource("starts")
    void leavingOutAllThatFollowChangesNothingAndNothingMoreCouldGo(long start) {
        Procedure procedure = Networks.randomWithLoops(9, 0.25, start);
        Precedence before = Precedence.of(procedure);
        Reduction reduction = Reduction.of(before);
        Set<LinkEnds> kept = kept(procedure, reduction);
        for (StepId earlier : before.steps()) {
            Set<StepId> reached = followed(kept, earlier);
            for (StepId later : before.steps()) {
                assertEquals(before.before(earlier, later), reached.contains(later));
            }
        }
        for (LinkEnds link : kept) {
            Set<LinkEnds> fewer = new HashSet<>(kept);
            fewer.remove(link);
            boolean needed = !followed(fewer, link.before()).contains(link.after());
            assertTrue(needed || touchesALoop(before, link), link::toString);
        }
        for (LinkEnds link : reduction.following()) {
            assertFalse(before.before(link.after(), link.before()), link::toString);
            List<StepId> way = reduction.way(link);
            for (int place = 1; place < way.size(); place++) {
                assertTrue(kept.contains(new LinkEnds(way.get(place - 1), way.get(place))));
            }
        }
    }

    private static boolean touchesALoop(Precedence precedence, LinkEnds link) {
        return precedence.before(link.before(), link.before())
                || precedence.before(link.after(), link.after());
    }

    private static Set<StepId> followed(Set<LinkEnds> links, StepId from) {
        Set<StepId> found = new HashSet<>();
        List<StepId> open = new ArrayList<>(List.of(from));
        while (!open.isEmpty()) {
            StepId here = open.remove(open.size() - 1);
            for (LinkEnds link : links) {
                if (link.before().equals(here) && found.add(link.after())) {
                    open.add(link.after());
                }
            }
        }
        return found;
    }
}
