package counterstep.plan;

import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.TimeRange;

/**
 * What a time is expected to be and how far it spreads, from three-point estimates: a step that may
 * take a at least and b at most, likely m, is expected to take (a + 4m + b)/6 with variance ((b −
 * a)/6)², and both are added up over steps one after the other, taken to be independent (the method
 * of Malcolm, Roseboom, Clark and Fazar 1959, from memory; formula and examples in Taylor,
 * Introduction to Management Science, chapter 8). A step without a range is expected to take what
 * it states, without spread, and so are waits.
 *
 * @param sixths six times the expected seconds, so that it is exact
 * @param variance in seconds squared
 */
public record ExpectedTime(long sixths, double variance) {
    private static final int SIX = 6;

    /** No time. */
    public static final ExpectedTime NONE = new ExpectedTime(0, 0);

    /** Of a step and its waits. A likely time outside the range widens it. */
    public static ExpectedTime of(Step step) {
        long likely = Durations.handsSeconds(step);
        if (!ranged(step)) {
            return new ExpectedTime(SIX * Durations.exact(step), 0);
        }
        TimeRange range = step.timeRange().orElseThrow();
        long least = Math.min(likely, range.least());
        long most = Math.max(likely, range.most());
        double deviation = (most - least) / (double) SIX;
        long waits = Durations.exact(step) - likely;
        return new ExpectedTime(least + 4 * likely + most + SIX * waits, deviation * deviation);
    }

    /** Whether a step has a three-point estimate: a likely time and a range. */
    public static boolean ranged(Step step) {
        return step.timeRange().isPresent() && step.seconds().isPresent();
    }

    /** Of all steps one after the other. */
    public static ExpectedTime total(Procedure procedure) {
        return procedure.steps().stream().map(ExpectedTime::of).reduce(NONE, ExpectedTime::plus);
    }

    /** This and another after it. */
    public ExpectedTime plus(ExpectedTime after) {
        return new ExpectedTime(sixths + after.sixths, variance + after.variance);
    }

    /** The expected value. */
    public double seconds() {
        return sixths / (double) SIX;
    }

    /** The standard deviation. */
    public double deviation() {
        return Math.sqrt(variance);
    }
}
