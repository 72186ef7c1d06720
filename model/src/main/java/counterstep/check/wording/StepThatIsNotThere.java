package counterstep.check.wording;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.model.Action;
import counterstep.model.Hazard;
import counterstep.model.Severity;
import counterstep.model.Step;
import counterstep.words.NamedSteps;
import counterstep.words.Vocabulary;
import java.util.List;
import java.util.stream.Stream;

/**
 * A text that says 'until step 12 is done' where there is no step 12, or 'step ?' since that step
 * was deleted, leaves the technician without the end of it.
 */
final class StepThatIsNotThere implements Check {
    @Override
    public About about() {
        return new About(
                "step-that-is-not-there",
                Severity.HINT,
                "A text names a step by a number that there is not.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        int steps = facts.procedure().steps().size();
        return Vocabulary.of(facts.procedure().titleBlock().language())
                .map(Vocabulary::namedSteps)
                .stream()
                .flatMap(
                        named ->
                                facts.procedure().steps().stream()
                                        .flatMap(step -> finding(facts, step, named, steps)));
    }

    private Stream<Finding> finding(Facts facts, Step step, NamedSteps named, int steps) {
        List<String> missing =
                texts(step)
                        .flatMap(text -> named.numbers(text).stream())
                        .filter(number -> !isThere(number, steps))
                        .distinct()
                        .map(number -> "'step " + number + "'")
                        .toList();
        if (missing.isEmpty()) {
            return Stream.empty();
        }
        String message =
                "%s names %s; there are steps 1 to %d."
                        .formatted(facts.phrases().step(step.id()), Phrases.list(missing), steps);
        return Stream.of(about().finding(Phrases.sentence(message), List.of(step.id()), List.of()));
    }

    private static Stream<String> texts(Step step) {
        Stream<String> own = Stream.of(step.title(), step.text(), step.spoken());
        Stream<String> done = step.actions().stream().map(Action::remark);
        Stream<String> hazards = step.hazards().stream().flatMap(StepThatIsNotThere::texts);
        return Stream.of(own, done, hazards).flatMap(each -> each);
    }

    private static Stream<String> texts(Hazard hazard) {
        return Stream.of(hazard.hazard(), hazard.consequence(), hazard.avoidance());
    }

    private static boolean isThere(String number, int steps) {
        return !number.equals(NamedSteps.GONE) && Integer.parseInt(number) <= steps;
    }
}
