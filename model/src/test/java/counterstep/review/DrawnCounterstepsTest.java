package counterstep.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.check.Finding;
import counterstep.edit.DeleteSteps;
import counterstep.implied.ImpliedLinks;
import counterstep.ledger.Ledger;
import counterstep.ledger.Totals;
import counterstep.mirror.DrawCounterstep;
import counterstep.model.Action;
import counterstep.model.ItemId;
import counterstep.model.Link;
import counterstep.model.LinkEnds;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Severity;
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

    /** The teardown with only those links that its items ask for, and a few more by chance. */
    private static Procedure loose(Procedure teardown, Random random) {
        Procedure bare = teardown.draft().links(List.of()).procedure();
        List<Link> links = new ArrayList<>();
        ImpliedLinks.of(bare).proposals().forEach(one -> links.add(drawn(one.ends())));
        List<StepId> steps = bare.steps().stream().map(Step::id).toList();
        for (int place = 1; place < steps.size(); place++) {
            if (random.nextInt(4) == 0) {
                links.add(Link.drawn(steps.get(place - 1), steps.get(place)));
            }
        }
        return bare.draft().links(links.stream().distinct().toList()).procedure();
    }

    private static Link drawn(LinkEnds ends) {
        return Link.drawn(ends.before(), ends.after());
    }

    /** What shows in some order only. */
    private static List<Finding> hidden(Procedure procedure) {
        return Review.of(procedure).findings().stream()
                .filter(finding -> finding.witness().isPresent())
                .toList();
    }

    @Test
    void noOrderOfTheDrawnMirrorGoesWrongWhereNoneOfTheTeardownDoes() {
        int tried = 0;
        for (long seed = 0; seed < PROCEDURES; seed++) {
            Procedure teardown = loose(teardown(whole(seed)), new Random(seed));
            if (hidden(teardown).isEmpty()) {
                tried++;
                Procedure procedure = drawn(teardown);
                assertEquals(List.of(), errors(procedure), "seed " + seed);
                long added =
                        procedure.links().stream()
                                .filter(link -> !teardown.links().contains(link))
                                .count();
                assertTrue(added <= 3L * procedure.steps().size(), added + " links");
            }
        }
        assertTrue(tried > PROCEDURES / 2, tried + " tried");
    }

    @Test
    void noOrderGoesWrongEitherWhereOneStepAfterTheOtherIsDrawn() {
        for (long seed = 0; seed < PROCEDURES / 4; seed++) {
            Procedure procedure = loose(teardown(whole(seed)), new Random(seed));
            boolean sound = hidden(procedure).isEmpty();
            List<StepId> steps = new ArrayList<>(of(procedure, Phase.TEARDOWN));
            Collections.shuffle(steps, new Random(seed));
            for (StepId step : steps) {
                procedure = new DrawCounterstep(Set.of(step)).apply(procedure);
            }
            if (sound) {
                assertEquals(List.of(), errors(procedure), "seed " + seed);
            }
        }
    }

    private static List<String> errors(Procedure procedure) {
        return Review.of(procedure).findings().stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .map(finding -> finding.check() + " " + finding.message() + finding.witness())
                .toList();
    }
}
