package counterstep.check.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.links.Precedence;
import counterstep.model.Procedure;
import counterstep.model.StepId;
import counterstep.review.Fixes;
import counterstep.review.Review;
import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class LinkImpliedAlreadyTest {
    private static Sketch checks(int count) {
        Sketch sketch = Sketch.of();
        for (int step = 1; step <= count; step++) {
            sketch.step("check");
        }
        return sketch;
    }

    /** Each step linked to all later ones. */
    private static Sketch closed(int count) {
        Sketch sketch = checks(count);
        for (int before = 1; before < count; before++) {
            for (int after = before + 1; after <= count; after++) {
                sketch.link(before, after);
            }
        }
        return sketch;
    }

    private static Fix fixOfFirst(Procedure procedure) {
        Facts facts = Facts.of(procedure);
        Review review = Review.of(facts);
        Finding first = review.findings().get(0);
        return Fixes.of(facts, review).of(first).orElseThrow();
    }

    @Test
    void aLinkPastAStepBetweenIsOneFindingWithItsWay() {
        assertEquals(
                List.of("link-implied-already [s1, s3] [] The link 1 → 3 follows from 1 → 2 → 3."),
                Found.in(checks(3).link(1, 2).link(2, 3).link(1, 3)));
    }

    @Test
    void manyAreOneFinding() {
        assertEquals(
                List.of(
                        "link-implied-already [s1, s3, s4, s5, s2] [] 6 links follow from others, such as 1 → 3 from 1 → 2 → 3."),
                Found.in(closed(5)));
    }

    @Test
    void leavingItOutKeepsTheOtherLinks() {
        Procedure procedure = checks(3).link(1, 2).link(2, 3).link(1, 3).procedure();
        Fix fix = fixOfFirst(procedure);
        Procedure after = fix.edit().apply(procedure);
        assertEquals("Leave it out", fix.name());
        assertEquals(checks(3).link(1, 2).link(2, 3).procedure(), after);
    }

    @Test
    void leavingManyOutLeavesWhatComesBeforeWhat() {
        Procedure procedure = closed(6).procedure();
        Fix fix = fixOfFirst(procedure);
        Procedure after = fix.edit().apply(procedure);
        assertEquals("Leave them out", fix.name());
        assertEquals(5, after.links().size());
        assertEquals(List.of(), Found.in(after));
        assertEquals(true, Precedence.of(after).before(new StepId("s1"), new StepId("s6")));
    }

    @Test
    void isSilentWhereEachLinkSaysSomething() {
        assertEquals(List.of(), Found.in(checks(4).link(1, 2).link(1, 3).link(2, 4).link(3, 4)));
    }
}
