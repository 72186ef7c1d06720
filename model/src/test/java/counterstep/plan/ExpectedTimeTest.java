package counterstep.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import counterstep.links.Precedence;
import counterstep.model.Link;
import counterstep.model.Phase;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.TimeRange;
import counterstep.testing.Networks;
import counterstep.testing.Sketch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class ExpectedTimeTest {
    private static Step likely(int seconds, int least, int most) {
        return Step.titled(new StepId("s1"), Phase.SERVICE, "Any")
                .draft()
                .seconds(OptionalInt.of(seconds))
                .timeRange(Optional.of(new TimeRange(least, most)))
                .step();
    }

    @Test
    void aStepWithoutARangeIsExpectedToTakeWhatItStatesAndSoAreItsWaits() {
        Step step = Sketch.of().step("wait wait 30").procedure().steps().get(0);

        assertEquals(new ExpectedTime(6 * 40, 0), ExpectedTime.of(step));
        Step ranged = step.draft().timeRange(Optional.of(new TimeRange(4, 22))).step();
        assertEquals(new ExpectedTime(4 + 4 * 10 + 22 + 6 * 30, 9), ExpectedTime.of(ranged));
    }

    @Test
    void aLikelyTimeOutsideTheRangeWidensIt() {
        assertEquals(ExpectedTime.of(likely(30, 5, 30)), ExpectedTime.of(likely(30, 5, 20)));
        assertEquals(ExpectedTime.of(likely(1, 1, 20)), ExpectedTime.of(likely(1, 5, 20)));
    }

    @Test
    void aRangeWithoutALikelyTimeIsNoEstimate() {
        Step step = likely(30, 5, 20).draft().seconds(OptionalInt.empty()).step();

        assertEquals(ExpectedTime.NONE, ExpectedTime.of(step));
        assertFalse(ExpectedTime.ranged(step));
    }

    @Test
    void ofTwoPathsAsLongTheOneThatSpreadsMostIsTold() {
        Procedure plain = Networks.linked("a b c", "a-b", "a-c");
        List<Step> steps = new ArrayList<>();
        for (Step step : plain.steps()) {
            int wide = step.id().value().charAt(0) - 'a';
            steps.add(
                    step.draft()
                            .seconds(OptionalInt.of(60))
                            .timeRange(Optional.of(new TimeRange(60 - 6 * wide, 60 + 6 * wide)))
                            .step());
        }
        Procedure procedure = plain.draft().steps(steps).procedure();

        ExpectedPath path = ExpectedPath.of(procedure, Precedence.of(procedure));

        assertEquals(Networks.ids("a c"), path.steps());
        assertEquals(new ExpectedTime(6 * 120, 16), path.length());
    }

    private static LongStream starts() {
        return LongStream.range(0, 300);
    }

    @ParameterizedTest
    @MethodSource("starts")
    void lengthAndSpreadAreWhatTryingEveryPathFinds(long start) {
        Random random = new Random(start);
        Procedure plain = Networks.random(3 + (int) (start % 7), 0.3, start);
        List<Step> steps =
                plain.steps().stream()
                        .map(step -> step.draft().timeRange(Optional.of(range(random))).step())
                        .toList();
        Procedure procedure = plain.draft().steps(steps).procedure();

        ExpectedTime best = ExpectedTime.NONE;
        for (Step step : steps) {
            if (plain.links().stream().noneMatch(link -> link.after().equals(step.id()))) {
                best = longer(best, longest(procedure, step));
            }
        }

        ExpectedPath found = ExpectedPath.of(procedure, Precedence.of(procedure));
        assertEquals(best.sixths(), found.length().sixths());
        assertEquals(best.variance(), found.length().variance(), 1e-9);
        ExpectedTime told =
                steps.stream()
                        .filter(step -> found.steps().contains(step.id()))
                        .map(ExpectedTime::of)
                        .reduce(ExpectedTime.NONE, ExpectedTime::plus);
        assertEquals(best.sixths(), told.sixths());
        assertEquals(best.variance(), told.variance(), 1e-9);
    }

    private static TimeRange range(Random random) {
        int least = random.nextInt(4);
        return new TimeRange(least, least + random.nextInt(4));
    }

    private static ExpectedTime longest(Procedure procedure, Step step) {
        ExpectedTime best = ExpectedTime.NONE;
        for (Link link : procedure.links()) {
            if (link.before().equals(step.id())) {
                Step next =
                        procedure.steps().stream()
                                .filter(each -> each.id().equals(link.after()))
                                .findFirst()
                                .orElseThrow();
                best = longer(best, longest(procedure, next));
            }
        }
        return ExpectedTime.of(step).plus(best);
    }

    private static ExpectedTime longer(ExpectedTime one, ExpectedTime other) {
        boolean more =
                other.sixths() > one.sixths()
                        || other.sixths() == one.sixths() && other.variance() > one.variance();
        return more ? other : one;
    }
}
