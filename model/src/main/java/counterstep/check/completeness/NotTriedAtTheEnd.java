package counterstep.check.completeness;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.ledger.Happening;
import counterstep.ledger.Witness;
import counterstep.links.Precedence;
import counterstep.model.Action;
import counterstep.model.ItemId;
import counterstep.model.Phase;
import counterstep.model.Severity;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether the device works again is known only when somebody tries it, closed: after the last
 * change to it in page order, and in every order that the links allow.
 */
final class NotTriedAtTheEnd implements Check {
    @Override
    public About about() {
        return new About(
                "not-tried-at-the-end",
                Severity.DOUBT,
                "Nobody checks the device after the last step of reassembly.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        List<Happening> happenings = facts.ledger().happenings();
        int last = -1;
        for (int place = 0; place < happenings.size(); place++) {
            Happening happening = happenings.get(place);
            if (putsBack(facts.index().step(happening.step())) && changes(happening.what())) {
                last = place;
            }
        }
        if (last < 0) {
            return Stream.empty();
        }
        boolean tried =
                happenings.subList(last, happenings.size()).stream()
                        .anyMatch(happening -> happening.what().verb() == Verb.CHECK);
        return tried
                ? inSomeOrder(facts).stream()
                : Stream.of(finding(facts, happenings.get(last).step()));
    }

    /** A plug that goes in for the trial belongs to what is tried. */
    private static boolean putsBack(Step step) {
        return step.phase() == Phase.REASSEMBLY || step.phase() == Phase.VERIFY;
    }

    /** Throwing away what came off does nothing to the device. */
    private static boolean changes(Action action) {
        return !action.verb().stateless() && action.verb() != Verb.DISCARD;
    }

    /** A step that may come after all checks, since none has to come after it. */
    private Optional<Finding> inSomeOrder(Facts facts) {
        Precedence precedence = facts.precedence();
        List<StepId> checks =
                facts.procedure().steps().stream()
                        .filter(NotTriedAtTheEnd::hasCheck)
                        .map(Step::id)
                        .toList();
        return facts.procedure().steps().stream()
                .filter(step -> precedence.loop().isEmpty() && putsBack(step))
                .filter(step -> checks.stream().noneMatch(c -> precedence.before(step.id(), c)))
                .flatMap(step -> leftUntried(step).stream().map(item -> late(facts, step, item)))
                .findFirst()
                .map(late -> finding(facts, late.then().orElseThrow()).inOrder(late));
    }

    private static boolean tries(Action action) {
        return action.verb() == Verb.CHECK;
    }

    /** What a step changes last, unless it checks the device after that. */
    private static Optional<ItemId> leftUntried(Step step) {
        Optional<ItemId> changed = Optional.empty();
        for (Action action : step.actions()) {
            if (tries(action)) {
                changed = Optional.empty();
            } else if (changes(action)) {
                changed = action.item();
            }
        }
        return changed;
    }

    /** All checks, with what has to come before them, then the step. */
    private static Witness late(Facts facts, Step step, ItemId item) {
        Precedence precedence = facts.precedence();
        List<Step> steps = facts.procedure().steps();
        List<StepId> first =
                precedence.topological().stream()
                        .filter(
                                one ->
                                        steps.stream()
                                                .filter(other -> !other.equals(step))
                                                .filter(NotTriedAtTheEnd::hasCheck)
                                                .anyMatch(check -> upTo(precedence, one, check)))
                        .toList();
        return new Witness(first, Optional.of(step.id()), item, List.of(), false);
    }

    private static boolean hasCheck(Step step) {
        return step.actions().stream().anyMatch(NotTriedAtTheEnd::tries);
    }

    private static boolean upTo(Precedence precedence, StepId one, Step check) {
        return one.equals(check.id()) || precedence.before(one, check.id());
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        TryAtTheEnd test = new TryAtTheEnd();
        return Stream.of(new Fix(test.name(), test));
    }

    private Finding finding(Facts facts, StepId last) {
        String message =
                "Nobody checks the device after "
                        + facts.phrases().step(last)
                        + ", the last of reassembly.";
        return about().finding(message, List.of(last), List.of());
    }
}
