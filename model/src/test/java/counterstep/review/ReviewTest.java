package counterstep.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.check.Check;
import counterstep.check.Finding;
import counterstep.model.CheckSetting;
import counterstep.model.Extras;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Waiver;
import counterstep.testing.AnyProcedure;
import counterstep.testing.RandomProcedure;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class ReviewTest {
    /** A hint in step 1, a screw that stays out since step 2, a plug left open since step 1. */
    private static Procedure faulty() {
        Procedure procedure =
                Sketch.of()
                        .screws("f1", 1)
                        .connectors("c1", 1)
                        .steps("disconnect c1", "remove f1")
                        .procedure();
        return procedure.withStep(
                procedure.steps().get(0).draft().seconds(OptionalInt.empty()).step());
    }

    private static List<String> checks(Procedure procedure) {
        return Review.of(procedure).findings().stream().map(Finding::check).toList();
    }

    private static Procedure set(Optional<Severity> severity) {
        CheckSetting setting = new CheckSetting("left-open", severity, "so", Extras.NONE);
        return faulty().draft().settings(List.of(setting)).procedure();
    }

    private static Procedure waived(List<StepId> steps, List<ItemId> items) {
        Waiver waiver =
                new Waiver(
                        "left-open", steps, items, "to be sealed", "R", "2026-01-01", Extras.NONE);
        return faulty().draft().waivers(List.of(waiver)).procedure();
    }

    @Test
    void errorsComeFirstAndThenPageOrderDecides() {
        assertEquals(List.of("left-open", "never-put-back", "step-without-time"), checks(faulty()));
    }

    @Test
    void countsBySeverityAndIsCleanWithoutError() {
        assertEquals(2, Review.of(faulty()).count(Severity.ERROR));
        assertEquals(1, Review.of(faulty()).count(Severity.HINT));
        assertFalse(Review.of(faulty()).clean());
        assertTrue(Review.of(Sketch.of().step("check").procedure()).clean());
    }

    @Test
    void theDocumentMaySwitchACheckOff() {
        assertEquals(List.of("never-put-back", "step-without-time"), checks(set(Optional.empty())));
    }

    @Test
    void theDocumentMayTakeACheckLessSeriously() {
        assertEquals(
                List.of("never-put-back", "left-open", "step-without-time"),
                checks(set(Optional.of(Severity.DOUBT))));
    }

    @Test
    void aWaivedFindingIsListedAndDoesNotCount() {
        Procedure procedure = waived(List.of(new StepId("s1")), List.of(new ItemId("c1")));
        Review review = Review.of(procedure);
        assertEquals(1, review.count(Severity.ERROR));
        assertEquals("to be sealed", review.findings().get(0).waived().orElseThrow().reason());
    }

    @Test
    void aWaiverOfOtherStepsNoLongerApplies() {
        Procedure procedure = waived(List.of(new StepId("s2")), List.of(new ItemId("c1")));
        assertEquals(2, Review.of(procedure).count(Severity.ERROR));
    }

    @Test
    void everyCheckHasAnIdOfItsOwnAndAFaultInOneSentence() {
        List<String> ids = AllChecks.list().stream().map(check -> check.about().id()).toList();
        assertEquals(ids.size(), ids.stream().distinct().count());
        for (Check check : AllChecks.list()) {
            assertTrue(check.about().id().matches("[a-z]+(-[a-z]+)*"), check.about().id());
            assertTrue(check.about().fault().matches("[A-Z].*[a-z]\\."), check.about().id());
        }
    }

    @Test
    void everyFindingOfAFaultyProcedureNamesAPlaceAndSpeaksASentence() {
        IntStream.range(0, 1_000)
                .mapToObj(seed -> RandomProcedure.withSteps(8, seed))
                .flatMap(procedure -> Review.of(procedure).findings().stream())
                .forEach(
                        finding -> {
                            assertFalse(
                                    finding.steps().isEmpty() && finding.items().isEmpty(),
                                    finding.toString());
                            assertTrue(
                                    finding.message().matches("[A-Z0-9].*\\."), finding.message());
                        });
    }

    @Test
    void anyDocumentAtAllCanBeReviewed() {
        for (long seed = 0; seed < 1_000; seed++) {
            Procedure procedure = AnyProcedure.of(seed);
            Review review = Review.of(procedure);
            assertEquals(review.findings(), Review.of(procedure).findings(), "seed " + seed);
        }
    }
}
