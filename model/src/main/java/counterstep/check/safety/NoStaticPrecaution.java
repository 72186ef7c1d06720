package counterstep.check.safety;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Phrases;
import counterstep.ledger.Witness;
import counterstep.model.Severity;
import counterstep.model.StepId;
import java.util.List;
import java.util.stream.Stream;

/**
 * A strap comes before the first board or open connector (common practice): in page order, and in
 * every order that the links allow.
 */
final class NoStaticPrecaution implements Check {
    @Override
    public About about() {
        return new About(
                "no-static-precaution",
                Severity.DOUBT,
                "A board or an open connector is touched before anything is done against static.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        StaticWork work = StaticWork.of(facts);
        if (work.touches().isEmpty() || work.statedAtTheHead()) {
            return Stream.empty();
        }
        StaticWork.Touch first = work.touches().get(0);
        List<StepId> before = work.precautions();
        boolean early =
                !before.isEmpty()
                        && facts.index().page(before.get(0)) <= facts.index().page(first.step());
        return early ? inSomeOrder(facts, work) : Stream.of(onThePage(facts, first, before));
    }

    private Finding onThePage(Facts facts, StaticWork.Touch touch, List<StepId> precautions) {
        Phrases phrases = facts.phrases();
        List<StepId> late = precautions.stream().limit(1).toList();
        String message =
                phrases.step(touch.step())
                        + touch.verb()
                        + phrases.name(touch.item())
                        + (late.isEmpty()
                                ? ", and no step does anything against static."
                                : ", and "
                                        + phrases.step(late.get(0))
                                        + " comes too late to guard against static.");
        return finding(message, touch, late);
    }

    /** Touched before every precaution in some order, since none has to come before it. */
    private Stream<Finding> inSomeOrder(Facts facts, StaticWork work) {
        return unguarded(facts, work)
                .limit(1)
                .flatMap(
                        touch ->
                                Earlier.of(facts).stream()
                                        .map(all -> told(facts, all, work, touch)));
    }

    private Finding told(Facts facts, Earlier orders, StaticWork work, StaticWork.Touch touch) {
        Witness witness = orders.witness(touch.step(), touch.item());
        return inSomeOrder(facts, work, touch).inOrder(witness);
    }

    private static Stream<StaticWork.Touch> unguarded(Facts facts, StaticWork work) {
        return work.touches().stream()
                .filter(
                        touch ->
                                work.precautions().stream()
                                        .noneMatch(step -> guards(facts, step, touch.step())));
    }

    private static boolean guards(Facts facts, StepId precaution, StepId touch) {
        return precaution.equals(touch) || facts.precedence().before(precaution, touch);
    }

    private Finding inSomeOrder(Facts facts, StaticWork work, StaticWork.Touch touch) {
        Phrases phrases = facts.phrases();
        StepId guard = work.precautions().get(0);
        String message =
                phrases.step(touch.step())
                        + touch.verb()
                        + phrases.name(touch.item())
                        + " before "
                        + phrases.step(guard)
                        + " guards against static.";
        return finding(message, touch, List.of(guard));
    }

    private Finding finding(String message, StaticWork.Touch touch, List<StepId> guard) {
        List<StepId> steps = Stream.concat(Stream.of(touch.step()), guard.stream()).toList();
        return about().finding(Phrases.sentence(message), steps, List.of(touch.item()));
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        return StaticFix.of(facts, finding);
    }
}
