package counterstep.review;

import counterstep.check.Facts;
import counterstep.check.Failed;
import counterstep.ledger.FailureKind;
import counterstep.ledger.Violation;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The conditions that fail in some order that the links allow, but not on the page. */
final class HiddenByThePage {
    /** A condition, wherever it is asked. */
    private record Place(Optional<StepId> step, int action, FailureKind kind, ItemId about) {}

    private HiddenByThePage() {}

    /** Those of a document, by step in page order. */
    static List<Violation> of(Facts facts) {
        Set<Place> onThePage = onThePage(facts);
        return facts.everyOrder().violations().stream()
                .filter(violation -> !onThePage.contains(place(violation)))
                .filter(violation -> !endsSoOnThePage(facts, violation))
                .toList();
    }

    private static boolean endsSoOnThePage(Facts facts, Violation violation) {
        return violation.step().isEmpty() && !facts.endings().of(violation.about()).isEmpty();
    }

    private static Set<Place> onThePage(Facts facts) {
        Set<Place> places = new HashSet<>();
        for (FailureKind kind : FailureKind.values()) {
            facts.allFailures(kind).stream().map(HiddenByThePage::place).forEach(places::add);
        }
        return places;
    }

    private static Place place(Failed failed) {
        return new Place(
                Optional.of(failed.step()),
                failed.happening().action(),
                failed.failure().kind(),
                failed.about());
    }

    private static Place place(Violation violation) {
        return new Place(violation.step(), violation.action(), violation.kind(), violation.about());
    }
}
