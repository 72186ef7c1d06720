package counterstep.editor.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.LinkEnds;
import counterstep.model.Phase;
import counterstep.model.StepId;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LinkRoutingTest {
    private static final StepFace FACE =
            new StepFace(1, "", Phase.TEARDOWN, List.of(), "", "", Optional.empty(), Contents.NONE);

    private final Map<StepId, Card> cards = new LinkedHashMap<>();

    private StepId step(boolean left, int row) {
        StepId id = new StepId("s" + (cards.size() + 1));
        double x = left ? 0 : Measures.RIGHT_COLUMN;
        cards.put(id, new Card(id, x, row * Measures.ROW, FACE));
        return id;
    }

    private Route route(StepId from, StepId to) {
        LinkEnds link = new LinkEnds(from, to);
        return LinkRouting.of(cards, List.of(link), Set.of(link), Set.of()).get(link);
    }

    @Test
    void neighboursOfAColumnAreJoinedByAShortStraightArrow() {
        StepId first = step(true, 0);
        StepId second = step(true, 1);

        assertEquals(
                List.of(
                        new Point2D.Double(118, Measures.HEIGHT),
                        new Point2D.Double(118, Measures.ROW)),
                route(first, second).points());
        assertTrue(route(first, second).critical());
    }

    @Test
    void aLinkPastAStepRunsOutsideOfItsColumn() {
        StepId left = step(true, 0);
        step(true, 1);
        StepId below = step(true, 2);
        StepId right = step(false, 2);
        step(false, 1);
        StepId above = step(false, 0);

        assertTrue(route(left, below).bounds().getMinX() < 0);
        assertTrue(route(right, above).bounds().getMaxX() > Measures.RIGHT_COLUMN + Measures.WIDTH);
    }

    @Test
    void aLinkAcrossRunsInTheGap() {
        StepId left = step(true, 0);
        StepId right = step(false, 3);

        Route route = route(left, right);

        assertEquals(Measures.WIDTH, route.bounds().getMinX());
        assertEquals(Measures.RIGHT_COLUMN, route.bounds().getMaxX());
    }

    @Test
    void aLinkToAStepThatIsNotDrawnIsLeftOut() {
        LinkEnds link = new LinkEnds(step(true, 0), new StepId("s99"));

        assertEquals(Map.of(), LinkRouting.of(cards, List.of(link), Set.of(), Set.of()));
    }

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noLinkCrossesAStepAndNoTwoShareAStretchOfALane(long seed) {
        List<StepId> all = new ArrayList<>();
        for (int row = 0; row < 12; row++) {
            all.add(step(true, row));
            all.add(step(false, row));
        }

        List<Route> routes =
                List.copyOf(
                        LinkRouting.of(cards, someLinks(all, new Random(seed)), Set.of(), Set.of())
                                .values());

        assertEquals(12, routes.size());
        for (Route route : routes) {
            cards.values().forEach(card -> assertFalse(crosses(route, card), route::toString));
        }
        for (int one = 0; one < routes.size(); one++) {
            for (int other = 0; other < one; other++) {
                assertFalse(shareLane(routes.get(one), routes.get(other)), "seed " + seed);
            }
        }
    }

    private List<LinkEnds> someLinks(List<StepId> steps, Random random) {
        Set<LinkEnds> links = new LinkedHashSet<>();
        while (links.size() < 12) {
            StepId from = steps.get(random.nextInt(steps.size()));
            StepId to = steps.get(random.nextInt(steps.size()));
            if (!from.equals(to)) {
                links.add(new LinkEnds(from, to));
            }
        }
        return List.copyOf(links);
    }

    private static boolean crosses(Route route, Card card) {
        for (int place = 1; place < route.points().size(); place++) {
            Line2D line =
                    new Line2D.Double(route.points().get(place - 1), route.points().get(place));
            if (line.intersects(
                    card.x() + 1, card.y() + 1, Measures.WIDTH - 2, Measures.HEIGHT - 2)) {
                return true;
            }
        }
        return false;
    }

    private static boolean shareLane(Route one, Route other) {
        if (one.points().size() < 4 || other.points().size() < 4) {
            return false;
        }
        Line2D mine = new Line2D.Double(one.points().get(1), one.points().get(2));
        Line2D theirs = new Line2D.Double(other.points().get(1), other.points().get(2));
        return mine.getX1() == theirs.getX1() && mine.intersectsLine(theirs);
    }
}
