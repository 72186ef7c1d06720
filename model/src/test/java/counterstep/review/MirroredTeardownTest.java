package counterstep.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.ledger.Ledger;
import counterstep.ledger.Totals;
import counterstep.model.Action;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.testing.Found;
import counterstep.testing.RandomTeardown;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A teardown with its mirror image after it is complete, and spoiling it is always noticed. */
final class MirroredTeardownTest {
    private static final int PROCEDURES = 1_000;

    @Test
    void takenApartAndPutTogetherByTheInversesGivesNoFinding() {
        for (long seed = 0; seed < PROCEDURES; seed++) {
            Procedure procedure = RandomTeardown.of(1 + (int) (seed % 5), seed).procedure();
            assertEquals(List.of(), Found.in(procedure), "seed " + seed);
            assertEquals(Totals.NOTHING, Ledger.of(procedure).totalsAtEnd(), "seed " + seed);
        }
    }

    @Test
    void leavingOutOneActionIsOneFaultAndOneFinding() {
        for (long seed = 0; seed < PROCEDURES; seed++) {
            Procedure procedure = RandomTeardown.of(1 + (int) (seed % 5), seed).procedure();
            Step step = anyStep(procedure, new Random(seed));
            List<Action> fewer = new ArrayList<>(step.actions());
            Action gone = fewer.remove(new Random(seed).nextInt(fewer.size()));
            List<String> found = Found.in(procedure.withStep(step.draft().actions(fewer).step()));
            assertEquals(1, found.size(), () -> gone + " left out: " + found);
        }
    }

    /** Any but the closing check; loosening before removal and its wait may be left out. */
    private static Step anyStep(Procedure procedure, Random random) {
        List<Step> steps =
                procedure.steps().stream()
                        .filter(step -> !step.title().startsWith("loosen"))
                        .filter(step -> !step.title().contains("finger-tight"))
                        .filter(step -> !step.title().startsWith("isolate"))
                        .filter(step -> !step.title().equals("check"))
                        .toList();
        return steps.get(random.nextInt(steps.size()));
    }
}
