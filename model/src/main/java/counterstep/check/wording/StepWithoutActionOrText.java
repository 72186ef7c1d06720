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

/** A title alone tells a stranger too little, and nothing of it is counted. */
final class StepWithoutActionOrText implements Check {
    @Override
    public About about() {
        return new About(
                "step-without-action-or-text",
                Severity.HINT,
                "A step has neither an action nor a text.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.procedure().steps().stream()
                .filter(step -> step.actions().isEmpty() && step.text().isBlank())
                .map(step -> finding(facts, step));
    }

    private Finding finding(Facts facts, Step step) {
        String message = facts.phrases().step(step.id()) + " has neither an action nor a text.";
        return about().finding(Phrases.sentence(message), List.of(step.id()), List.of());
    }
}
