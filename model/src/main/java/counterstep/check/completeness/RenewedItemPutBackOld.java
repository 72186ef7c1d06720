package counterstep.check.completeness;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Phrases;
import counterstep.ledger.Happening;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.Part;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.List;
import java.util.stream.Stream;

/** What the service exchanges, and one-time fasteners, must not go back. */
final class RenewedItemPutBackOld implements Check {
    @Override
    public About about() {
        return new About(
                "renewed-item-put-back-old",
                Severity.ERROR,
                "An item that is to be renewed goes back, or stays, as the old one.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.procedure().items().stream()
                .filter(RenewedItemPutBackOld::renewed)
                .filter(item -> facts.endings().of(item.id()).isEmpty())
                .flatMap(item -> finding(facts, item).stream());
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        return facts.ledger().happenings(finding.items().get(0), Verb.REINSTALL).stream()
                .map(old -> new DiscardOld(old.step(), finding.items().get(0), old.what().count()))
                .map(edit -> new Fix("Fit a new one", edit));
    }

    private static boolean renewed(Item item) {
        return (item instanceof Part part && part.renewed())
                || (item instanceof FastenerSet set && set.renew());
    }

    private List<Finding> finding(Facts facts, Item item) {
        List<StepId> old = steps(facts, item, Verb.REINSTALL);
        if (!old.isEmpty()) {
            String message =
                    facts.phrases().all(item.id()).text()
                            + ": to be renewed, but "
                            + facts.phrases().steps(old)
                            + (old.size() == 1 ? " puts" : " put")
                            + " back what was taken off.";
            return List.of(about().finding(Phrases.sentence(message), old, List.of(item.id())));
        }
        boolean stays = item instanceof Part && steps(facts, item, Verb.FIT_NEW).isEmpty();
        if (!stays) {
            return List.of();
        }
        String message = item.name() + " is to be renewed, but no step fits a new one.";
        List<StepId> touched =
                facts.ledger().happenings(item.id()).stream().map(Happening::step).toList();
        return List.of(about().finding(Phrases.sentence(message), touched, List.of(item.id())));
    }

    private static List<StepId> steps(Facts facts, Item item, Verb verb) {
        return facts.ledger().happenings(item.id(), verb).stream()
                .map(Happening::step)
                .distinct()
                .toList();
    }
}
