package counterstep.check.sequence;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.model.Severity;
import counterstep.model.StepId;
import java.util.List;
import java.util.stream.Stream;

/** Steps that wait for each other in a ring can be done in no order. */
final class LoopInTheLinks implements Check {
    @Override
    public About about() {
        return new About(
                "loop-in-the-links", Severity.ERROR, "Steps wait for each other in a ring.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.precedence().loop().stream().map(loop -> finding(facts, loop));
    }

    private Finding finding(Facts facts, List<StepId> loop) {
        List<String> numbers =
                loop.stream().map(step -> String.valueOf(facts.index().number(step))).toList();
        String message =
                "The links lead in a ring, "
                        + String.join(" → ", numbers)
                        + " → "
                        + numbers.get(0)
                        + ": no order of the steps can keep them.";
        return about().finding(message, loop, List.of());
    }
}
