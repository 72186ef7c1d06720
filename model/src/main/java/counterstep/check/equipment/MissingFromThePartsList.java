package counterstep.check.equipment;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.ledger.Happening;
import counterstep.model.ItemId;
import counterstep.model.Part;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Verb;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The guide lists the new parts to have ready; without a number nobody can order them. */
final class MissingFromThePartsList implements Check {
    @Override
    public About about() {
        return new About(
                "missing-from-the-parts-list",
                Severity.DOUBT,
                "A part is renewed, and no part number says which one to order.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        Map<ItemId, List<StepId>> fitted =
                facts.ledger().happenings().stream()
                        .filter(happening -> happening.what().verb() == Verb.FIT_NEW)
                        .collect(
                                Collectors.groupingBy(
                                        happening -> happening.what().item().orElseThrow(),
                                        Collectors.mapping(Happening::step, Collectors.toList())));
        return facts.procedure().items().stream()
                .filter(Part.class::isInstance)
                .map(Part.class::cast)
                .filter(part -> part.number().isBlank())
                .filter(part -> part.renewed() || fitted.containsKey(part.id()))
                .map(part -> finding(facts, part, fitted.getOrDefault(part.id(), List.of())));
    }

    private Finding finding(Facts facts, Part part, List<StepId> steps) {
        String where = steps.isEmpty() ? "" : " in " + facts.phrases().steps(steps);
        String message =
                "A new " + part.name() + " is needed" + where + ", and has no number to order by.";
        return about().finding(message, steps, List.of(part.id()));
    }
}
