package counterstep.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.edit.AddWaiver;
import counterstep.mending.DrawLinks;
import counterstep.model.Extras;
import counterstep.model.Link;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Waiver;
import counterstep.testing.RandomTeardown;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Faults that the page hides, told by the same checks with an order that shows them. */
final class InSomeOrderTest {
    private static List<String> found(Procedure procedure) {
        return Review.of(procedure).findings().stream()
                .map(finding -> finding.message() + witness(finding))
                .toList();
    }

    private static String witness(Finding finding) {
        return finding.witness()
                .map(order -> " " + order.first() + " then " + order.then().orElse(null))
                .orElse("");
    }

    private static Sketch lid() {
        return Sketch.of()
                .connectors("c1", 1)
                .part("p1", "", "", "c1")
                .steps("move aside p1", "disconnect c1")
                .phase(Phase.REASSEMBLY)
                .steps("reconnect c1", "return p1", "check");
    }

    /** Told where the cover goes on; the work under it, later in that order, is the same fault. */
    @Test
    void aCoverThatMayGoOnTooEarlyIsOneFinding() {
        Procedure drawn = lid().link(1, 2).link(2, 3).link(1, 4).link(4, 5).procedure();
        assertEquals(
                List.of(
                        "In some order: P1 part goes on in step 4 over c1 plugs (still open),"
                                + " finished only in step 3. [s1, s2] then s4"),
                found(drawn).stream().filter(line -> line.contains("goes on")).toList());
    }

    @Test
    void whatFailsOnThePageIsNotToldAgain() {
        Procedure early = lid().steps("return p1").procedure();
        assertTrue(
                Review.of(early).findings().stream().allMatch(one -> one.witness().isEmpty()),
                () -> found(early).toString());
    }

    @Test
    void aRingHasNoOrderToGoWrongIn() {
        Procedure ring = lid().link(1, 2).link(2, 1).procedure();
        assertEquals(
                List.of("loop-in-the-links"),
                Review.of(ring).findings().stream().map(Finding::check).toList());
    }

    /** No condition fails unseen: with links lost, there is a finding whenever an order fails. */
    @Test
    void everyFailingOrderIsToldAndTheFixesMendIt() {
        for (long seed = 0; seed < 40; seed++) {
            Random random = new Random(seed);
            Procedure told = RandomTeardown.of(1 + (int) (seed % 3), seed).procedure();
            List<Link> few = told.links().stream().filter(l -> random.nextInt(3) > 0).toList();
            Procedure drawn = told.draft().links(few).procedure();
            Facts facts = Facts.of(drawn);
            List<Finding> findings = Review.of(facts).findings();
            boolean fails = !facts.everyOrder().violations().isEmpty();
            assertEquals(fails, findings.stream().anyMatch(one -> one.witness().isPresent()));
            Mending mended = Mending.of(drawn);
            assertTrue(mended.review().clean(), "seed " + seed + mended.review().findings());
            assertFalse(fails && mended.mended().isEmpty());
        }
    }

    private static Fixes fixes(Procedure procedure) {
        Facts facts = Facts.of(procedure);
        return Fixes.of(facts, Review.of(facts));
    }

    @Test
    void theMissingLinksTogetherAreOneChangeAfterWhichNoOrderGoesWrong() {
        Procedure drawn = lid().inAnyOrder().procedure();
        DrawLinks links = fixes(drawn).everyOrder().orElseThrow();
        assertEquals("[s1 s2, s2 s3, s3 s4]", ends(links));
        Procedure mended = links.apply(drawn);
        assertTrue(Facts.of(mended).everyOrder().violations().isEmpty());
        assertTrue(fixes(mended).everyOrder().isEmpty());
    }

    private static String ends(DrawLinks links) {
        return links.links().stream()
                .map(link -> link.before() + " " + link.after())
                .toList()
                .toString();
    }

    @Test
    void anOrderThatIsAcceptedAsksForNoLink() {
        Procedure drawn = lid().link(1, 2).link(2, 3).link(2, 4).link(3, 5).link(4, 5).procedure();
        Finding hidden =
                Review.of(drawn).findings().stream()
                        .filter(finding -> finding.witness().isPresent())
                        .findFirst()
                        .orElseThrow();
        Waiver waiver =
                new Waiver(
                        hidden.check(),
                        hidden.steps(),
                        hidden.items(),
                        "never done so here",
                        "R. Weir",
                        "2026-01-01",
                        Extras.NONE);
        assertTrue(fixes(drawn).everyOrder().isPresent());
        assertTrue(fixes(new AddWaiver(waiver).apply(drawn)).everyOrder().isEmpty());
    }
}
