package counterstep.check.wording;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.model.Severity;
import counterstep.model.Step;
import java.util.List;
import java.util.stream.Stream;

/** A step without time counts 0, so the plan is shorter than the work. 0 itself is a time. */
final class StepWithoutTime implements Check {
    @Override
    public About about() {
        return new About("step-without-time", Severity.HINT, "A step states no time.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.procedure().steps().stream()
                .filter(step -> step.seconds().isEmpty())
                .map(step -> finding(facts, step));
    }

    private Finding finding(Facts facts, Step step) {
        String message = facts.phrases().step(step.id()) + " states no time; the plan counts it 0.";
        return about().finding(Phrases.sentence(message), List.of(step.id()), List.of());
    }
}
