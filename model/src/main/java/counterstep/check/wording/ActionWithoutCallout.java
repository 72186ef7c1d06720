package counterstep.check.wording;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.model.Callout;
import counterstep.model.EnergySource;
import counterstep.model.ItemId;
import counterstep.model.Setting;
import counterstep.model.Severity;
import counterstep.model.Step;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Where a step numbers what it acts on, what has no number seems not to be meant (common practice).
 * A step whose photos have no callouts on items is left alone.
 */
final class ActionWithoutCallout implements Check {
    @Override
    public About about() {
        return new About(
                "action-without-callout",
                Severity.HINT,
                "A step numbers some of the items it acts on in its photos, but not all.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.procedure().steps().stream()
                .filter(step -> !step.photos().isEmpty())
                .flatMap(step -> finding(facts, step, numbered(step)));
    }

    private static Set<ItemId> numbered(Step step) {
        return step.photos().stream()
                .flatMap(photo -> photo.callouts().stream())
                .map(Callout::item)
                .flatMap(item -> item.stream())
                .collect(Collectors.toSet());
    }

    private Stream<Finding> finding(Facts facts, Step step, Set<ItemId> numbered) {
        List<ItemId> missing =
                step.actions().stream()
                        .filter(action -> !action.verb().stateless())
                        .flatMap(action -> action.item().stream())
                        .filter(item -> !numbered.contains(item) && seen(facts, item))
                        .distinct()
                        .toList();
        if (numbered.isEmpty() || missing.isEmpty()) {
            return Stream.empty();
        }
        String message =
                "In %s, no callout shows %s."
                        .formatted(facts.phrases().step(step.id()), facts.phrases().names(missing));
        return Stream.of(about().finding(Phrases.sentence(message), List.of(step.id()), missing));
    }

    /** A gap and the charge of a cell are at no one place of a photo. */
    private static boolean seen(Facts facts, ItemId item) {
        return !(facts.index().item(item) instanceof Setting)
                && !(facts.index().item(item) instanceof EnergySource);
    }
}
