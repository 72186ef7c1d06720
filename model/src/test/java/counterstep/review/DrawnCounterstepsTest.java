package counterstep.review;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.edit.DeleteSteps;
import counterstep.ledger.Ledger;
import counterstep.ledger.Totals;
import counterstep.mirror.DrawCounterstep;
import counterstep.model.Action;
import counterstep.model.ItemId;
import counterstep.model.Link;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.testing.Found;
import counterstep.testing.RandomTeardown;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The mirror image of a teardown that is clean but for what it leaves open is clean. */
final class DrawnCounterstepsTest {
    private static final int PROCEDURES = 1_000;

    private static Procedure whole(long seed) {
        return RandomTeardown.of(1 + (int) (seed % 5), seed).procedure();
    }

    private static Set<StepId> of(Procedure procedure, Phase phase) {
        return procedure.steps().stream()
                .filter(step -> step.phase() == phase)
                .map(Step::id)
                .collect(Collectors.toSet());
    }

    private static Procedure teardown(Procedure whole) {
        return new DeleteSteps(of(whole, Phase.REASSEMBLY)).apply(whole);
    }

    private static Procedure drawn(Procedure teardown) {
        return DrawCounterstep.of(teardown, Set.of()).apply(teardown);
    }

    @Test
    void theDrawnMirrorOfATeardownGivesNoFinding() {
        for (long seed = 0; seed < PROCEDURES; seed++) {
            Procedure procedure = drawn(teardown(whole(seed)));
            assertEquals(List.of(), Found.in(procedure), "seed " + seed);
            assertEquals(Totals.NOTHING, Ledger.of(procedure).totalsAtEnd(), "seed " + seed);
        }
    }

    @Test
    void itIsTheOneThatWasWrittenByHandButForHowJointsAreMade() {
        for (long seed = 0; seed < PROCEDURES; seed++) {
            Procedure whole = whole(seed);
            assertEquals(back(whole), back(drawn(teardown(whole))), "seed " + seed);
        }
    }

    private static List<List<String>> back(Procedure procedure) {
        return procedure.steps().stream()
                .filter(step -> step.phase() == Phase.REASSEMBLY)
                .map(step -> step.actions().stream().flatMap(DrawnCounterstepsTest::said).toList())
                .filter(said -> !said.isEmpty())
                .toList();
    }

    private static Stream<String> said(Action action) {
        ItemId item = action.item().orElseThrow();
        String said =
                "%s %s %d %s"
                        .formatted(
                                action.verb().word(), item, action.count(), action.fingerTight());
        return item.value().startsWith("j") ? Stream.empty() : Stream.of(said);
    }

    @Test
    void oneStepAfterTheOtherItEndsInTheSame() {
        for (long seed = 0; seed < PROCEDURES / 5; seed++) {
            Procedure procedure = teardown(whole(seed));
            List<StepId> steps = new ArrayList<>(of(procedure, Phase.TEARDOWN));
            Collections.shuffle(steps, new Random(seed));
            for (StepId step : steps) {
                procedure = new DrawCounterstep(Set.of(step)).apply(procedure);
            }
            assertEquals(List.of(), Found.in(procedure), "seed " + seed);
            assertEquals(procedure, drawn(procedure), "seed " + seed);
        }
    }

    @Test
    void whatIsLinkedAsItWasTakenApartIsCleanInEveryOrderThatIsTried() {
        for (long seed = 0; seed < PROCEDURES / 5; seed++) {
            Procedure teardown = teardown(whole(seed));
            List<StepId> down = teardown.steps().stream().map(Step::id).toList();
            List<Link> links = new ArrayList<>();
            for (int place = 1; place < down.size(); place++) {
                links.add(Link.drawn(down.get(place - 1), down.get(place)));
            }
            Procedure procedure = drawn(teardown.draft().links(links).procedure());
            assertEquals(List.of(), Found.in(procedure), "seed " + seed);
            assertEquals(procedure.steps().size() - 1, procedure.links().size(), "seed " + seed);
        }
    }
}
