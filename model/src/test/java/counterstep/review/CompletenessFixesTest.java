package counterstep.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.completeness.CompletenessChecks;
import counterstep.edit.DeleteSteps;
import counterstep.model.Action;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.store.ProcedureFile;
import counterstep.testing.RandomTeardown;
import counterstep.testing.Samples;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * What is not put back is mended by the fixes, one after the other, and nothing else gets worse.
 */
final class CompletenessFixesTest {
    private static final Set<String> COMPLETENESS =
            CompletenessChecks.all().stream()
                    .map(Check::about)
                    .map(about -> about.id())
                    .collect(Collectors.toSet());

    private static List<Finding> incomplete(Procedure procedure) {
        return Review.of(procedure).findings().stream()
                .filter(finding -> COMPLETENESS.contains(finding.check()))
                .toList();
    }

    private static Optional<Fix> fix(Procedure procedure, Finding finding) {
        Facts facts = Facts.of(procedure);
        return Fixes.of(facts, Review.of(facts)).of(finding);
    }

    private static Map<String, Long> counts(Procedure procedure) {
        return Review.of(procedure).findings().stream()
                .collect(Collectors.groupingBy(Finding::check, Collectors.counting()));
    }

    /** Applies fixes in an order of its own until nothing is incomplete; tells their names. */
    private static List<String> mended(Procedure broken, Random random) {
        Procedure procedure = broken;
        List<String> names = new ArrayList<>();
        List<Finding> left = incomplete(procedure);
        while (!left.isEmpty()) {
            Finding finding = left.get(random.nextInt(left.size()));
            Fix fix = fix(procedure, finding).orElseThrow(() -> new AssertionError(finding));
            Map<String, Long> before = counts(procedure);
            procedure = fix.edit().apply(procedure);
            counts(procedure)
                    .forEach(
                            (check, count) ->
                                    assertTrue(count <= before.getOrDefault(check, 0L), check));
            names.add(fix.name());
            left = incomplete(procedure);
        }
        Collections.sort(names);
        return names;
    }

    @Test
    void allThatTheHurriedWriterLeftUndoneIsMendedInAnyOrder() {
        Procedure hurried = ProcedureFile.read(Samples.file(Samples.HURRIED));
        for (long seed = 0; seed < 40; seed++) {
            assertEquals(
                    List.of("Draw it", "Draw it", "Draw it", "Draw it", "Draw it", "Set to 5"),
                    mended(hurried, new Random(seed)));
        }
    }

    @Test
    void aTeardownThatNothingPutsBackIsMendedInAnyOrder() {
        Map<String, Integer> used = new HashMap<>();
        for (long seed = 0; seed < 60; seed++) {
            Procedure whole = RandomTeardown.of(1 + (int) (seed % 3), seed).procedure();
            Set<StepId> back =
                    whole.steps().stream()
                            .filter(step -> step.phase() == Phase.REASSEMBLY)
                            .map(Step::id)
                            .collect(Collectors.toSet());
            Procedure teardown = new DeleteSteps(back).apply(whole);
            mended(teardown, new Random(seed)).forEach(name -> used.merge(name, 1, Integer::sum));
        }
        assertEquals(Set.of("Draw it"), used.keySet());
    }

    @Test
    void anyOneActionThatIsLeftOutOnTheWayBackIsMended() {
        int tried = 0;
        for (long seed = 0; seed < 300; seed++) {
            Procedure whole = RandomTeardown.of(1 + (int) (seed % 4), seed).procedure();
            Random random = new Random(seed);
            List<Step> back =
                    whole.steps().stream()
                            .filter(step -> step.phase() == Phase.REASSEMBLY)
                            .toList();
            Step step = back.get(random.nextInt(back.size()));
            List<Action> fewer = new ArrayList<>(step.actions());
            fewer.remove(random.nextInt(fewer.size()));
            Procedure broken = whole.withStep(step.draft().actions(fewer).step());
            List<Finding> left = incomplete(broken);
            if (!left.isEmpty()) {
                tried++;
                Fix fix =
                        fix(broken, left.get(0))
                                .orElseThrow(() -> new AssertionError(step + " " + left));
                assertEquals(List.of(), Review.of(fix.edit().apply(broken)).findings(), "seed");
            }
        }
        assertTrue(tried > 200, tried + " tried");
    }
}
