package counterstep.check.safety;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.model.EnergySource;
import counterstep.model.Hazard;
import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.Step;
import counterstep.model.StepId;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Before a cell is warmed somebody says that it can burn: in a hazard of that step or an earlier
 * one, or in a caution for the whole work, which speaks of the cell and of heat.
 */
final class HeatNearACell implements Check {
    private static final Pattern HEAT =
            Pattern.compile("(?iu)\\b(heat\\w*|hot|warm\\w*|temperature)\\b|°\\s?C");

    @Override
    public About about() {
        return new About(
                "heat-near-a-cell",
                Severity.DOUBT,
                "Something is heated with a cell in the device, and no hazard warns of that.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        HeatWork heat = HeatWork.of(facts);
        List<Step> near =
                heat.steps().stream().filter(step -> !heat.cellsIn(step.id()).isEmpty()).toList();
        if (near.isEmpty() || warned(facts, heat, near.get(0))) {
            return Stream.empty();
        }
        return Stream.of(finding(facts, heat, near));
    }

    private static boolean warned(Facts facts, HeatWork heat, Step first) {
        List<EnergySource> cells = heat.cellsIn(first.id());
        int upTo = facts.index().page(first.id()) + 1;
        return Stream.concat(
                        facts.procedure().titleBlock().cautions().stream(),
                        facts.procedure().steps().subList(0, upTo).stream()
                                .flatMap(step -> step.hazards().stream()))
                .anyMatch(hazard -> warns(hazard, cells));
    }

    private static boolean warns(Hazard hazard, List<EnergySource> cells) {
        String text = String.join(" ", hazard.hazard(), hazard.consequence(), hazard.avoidance());
        boolean ofCell =
                HeatWork.speaksOfCells(text)
                        || cells.stream().anyMatch(cell -> concerns(hazard, text, cell));
        return ofCell && HEAT.matcher(text).find();
    }

    private static boolean concerns(Hazard hazard, String text, EnergySource cell) {
        return hazard.items().contains(cell.id())
                || cell.isolatedBy().filter(hazard.items()::contains).isPresent()
                || !cell.name().isBlank() && text.contains(cell.name());
    }

    private Finding finding(Facts facts, HeatWork heat, List<Step> near) {
        List<StepId> steps = near.stream().map(Step::id).toList();
        List<ItemId> cells = heat.cellsIn(steps.get(0)).stream().map(EnergySource::id).toList();
        String message =
                "%s %s with %s in the device, and no hazard says what heat does to it."
                        .formatted(
                                facts.phrases().steps(steps),
                                steps.size() == 1 ? "heats" : "heat",
                                facts.phrases().names(cells));
        return about().finding(Phrases.sentence(message), steps, cells);
    }
}
