package counterstep.mending;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.LinkEnds;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class MoveStepTest {
    private static StepId step(int number) {
        return new StepId("s" + number);
    }

    private static String page(Procedure procedure) {
        return procedure.steps().stream().map(step -> step.id().toString()).toList().toString();
    }

    private static List<String> links(Procedure procedure) {
        return procedure.links().stream()
                .map(link -> link.before() + " " + link.after())
                .sorted()
                .toList();
    }

    private static Sketch four() {
        return Sketch.of().steps("check", "check", "check", "check");
    }

    @Test
    void inAChainTheTwoChangePlaces() {
        Procedure moved = new MoveStep(step(3), step(2)).apply(four().procedure());
        assertEquals("[s1, s3, s2, s4]", page(moved));
        assertEquals(List.of("s1 s3", "s2 s4", "s3 s2"), links(moved));
    }

    @Test
    void whatItStillNeedsStaysBeforeIt() {
        Procedure drawn = four().link(1, 2).link(1, 3).link(2, 4).link(3, 4).procedure();
        Procedure moved = new MoveStep(step(4), step(2)).apply(drawn);
        assertEquals("[s1, s4, s2, s3]", page(moved));
        assertEquals(List.of("s1 s3", "s3 s4", "s4 s2"), links(moved));
    }

    @Test
    void linksThatNowFollowFromOthersAreLeftOut() {
        Procedure drawn = Sketch.of().steps("check", "check", "check").link(1, 3).procedure();
        Procedure linked =
                new DrawLinks(
                                List.of(
                                        new LinkEnds(step(1), step(2)),
                                        new LinkEnds(step(2), step(3))))
                        .apply(drawn);
        assertEquals(List.of("s1 s2", "s2 s3"), links(linked));
    }

    @Test
    void whatTheWriterDrewTwiceStaysDrawn() {
        Procedure drawn = four().link(1, 2).link(2, 3).link(1, 3).procedure();
        Procedure linked = new DrawLinks(List.of(new LinkEnds(step(3), step(4)))).apply(drawn);
        assertEquals(List.of("s1 s2", "s1 s3", "s2 s3", "s3 s4"), links(linked));
    }

    @Test
    void thePageFollowsTheLinks() {
        Procedure drawn = four().link(3, 2).procedure();
        assertEquals("[s1, s3, s2, s4]", page(new PageInOrder().apply(drawn)));
    }

    @Test
    void aRingLeavesThePageAsItIs() {
        Procedure ring = four().link(1, 2).link(2, 1).procedure();
        assertEquals(ring, new PageInOrder().apply(ring));
    }
}
