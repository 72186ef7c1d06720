package counterstep.reach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.model.Action;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Procedure;
import counterstep.model.Severity;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.review.Review;
import counterstep.testing.AsTold;
import counterstep.testing.Found;
import counterstep.testing.RandomTeardown;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The part that reaches an item is as complete as the whole, and nothing in it is idle. */
final class ReachPropertyTest {
    private static final int PROCEDURES = 150;
    private static final int MOST_IDLE_TRIED = 6;

    @Test
    void nothingIsFoundInThePartOfACompleteProcedure() {
        for (long seed = 0; seed < PROCEDURES; seed++) {
            Procedure whole = whole(seed);
            Item target = target(whole, seed);
            Reach reach = Reach.of(whole, Set.of(target.id()));
            assertEquals(List.of(), Found.in(reach.procedure()), target.id() + ", seed " + seed);
            assertTrue(reach.steps().containsAll(acting(whole, target.id())), "seed " + seed);
            assertEquals(whole.steps().size(), reach.steps().size() + reach.leftOut().size());
        }
    }

    @Test
    void noOrderOfItGoesWrongEvenIfNoLinkWasDrawn() {
        for (long seed = 0; seed < PROCEDURES; seed++) {
            Procedure whole = whole(seed).draft().links(List.of()).procedure();
            Item target = target(whole, seed);
            Procedure part = Reach.of(whole, Set.of(target.id())).procedure();
            List<String> errors =
                    Review.of(part).findings().stream()
                            .filter(finding -> finding.severity() == Severity.ERROR)
                            .map(finding -> finding.check() + " " + finding.message())
                            .toList();
            assertEquals(List.of(), errors, target.id() + ", seed " + seed);
        }
    }

    /**
     * Of the steps that change something, no choice that holds the target's is free of errors but
     * one with all of them: the part is the least.
     */
    @Test
    void leavingOutAnyOfItsStepsIsAnErrorOrMissesTheTarget() {
        int tried = 0;
        for (long seed = 0; seed < PROCEDURES; seed++) {
            Procedure whole = whole(seed);
            Item target = target(whole, seed);
            Reach reach = Reach.of(whole, Set.of(target.id()));
            List<StepId> idle = new ArrayList<>(reach.steps());
            idle.removeAll(acting(whole, target.id()));
            idle.removeIf(step -> whole.step(step).title().equals("check"));
            if (!idle.isEmpty() && idle.size() <= MOST_IDLE_TRIED) {
                tried++;
                for (int choice = 1; choice < 1 << idle.size(); choice++) {
                    Set<StepId> left = new HashSet<>(reach.steps());
                    for (int one = 0; one < idle.size(); one++) {
                        if ((choice >> one & 1) == 1) {
                            left.remove(idle.get(one));
                        }
                    }
                    assertTrue(isWrong(whole, left), "only " + left + ", seed " + seed);
                }
            }
        }
        assertTrue(tried > PROCEDURES / 5, tried + " were small enough");
    }

    @Test
    void inMostItLeavesSomethingOut() {
        int smaller = 0;
        for (long seed = 0; seed < PROCEDURES; seed++) {
            Procedure whole = whole(seed);
            Reach reach = Reach.of(whole, Set.of(target(whole, seed).id()));
            smaller += reach.leftOut().isEmpty() ? 0 : 1;
            reach.leftOut().forEach(left -> assertFalse(left.reason().isBlank()));
        }
        assertTrue(smaller > PROCEDURES / 2, smaller + " are smaller");
    }

    private static Procedure whole(long seed) {
        return RandomTeardown.branching(1 + (int) (seed % 6), seed).procedure();
    }

    private static Item target(Procedure whole, long seed) {
        List<Item> items = whole.items();
        return items.get(new Random(seed).nextInt(items.size()));
    }

    private static Set<StepId> acting(Procedure whole, ItemId item) {
        Set<StepId> acting = new HashSet<>();
        for (Step step : whole.steps()) {
            if (step.actions().stream().map(Action::item).anyMatch(Optional.of(item)::equals)) {
                acting.add(step.id());
            }
        }
        return acting;
    }

    /** All items stay, so that every fact is asked. */
    private static boolean isWrong(Procedure whole, Set<StepId> left) {
        List<Step> steps = whole.steps().stream().filter(step -> left.contains(step.id())).toList();
        Procedure part = whole.draft().links(List.of()).steps(steps).procedure();
        return Review.of(AsTold.linked(part)).count(Severity.ERROR) > 0;
    }
}
