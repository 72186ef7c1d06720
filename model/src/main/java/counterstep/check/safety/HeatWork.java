package counterstep.check.safety;

import counterstep.check.Facts;
import counterstep.ledger.PartState;
import counterstep.model.Action;
import counterstep.model.EnergySource;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Joint;
import counterstep.model.Part;
import counterstep.model.ReleaseMethod;
import counterstep.model.SourceKind;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.ToolKind;
import counterstep.model.Verb;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Heat beside cells. A cell is in the device from the start. It is out while the part is away that
 * is the thing itself: called as the source is, or speaking of a cell and tethered by its plug
 * alone.
 */
final class HeatWork {
    private static final Pattern CELL =
            Pattern.compile("(?iu)\\b(cells?|batter(y|ies)|accumulators?|lithium)\\b");

    private final Facts facts;

    /** Each cell and the parts that may be the thing itself. */
    private final Map<EnergySource, List<ItemId>> cells;

    private HeatWork(Facts facts) {
        this.facts = facts;
        this.cells =
                facts.procedure().items().stream()
                        .filter(HeatWork::isCell)
                        .map(EnergySource.class::cast)
                        .collect(
                                Collectors.toMap(
                                        cell -> cell,
                                        this::parts,
                                        (first, second) -> first,
                                        LinkedHashMap::new));
    }

    static HeatWork of(Facts facts) {
        return new HeatWork(facts);
    }

    private static boolean isCell(Item item) {
        return item instanceof EnergySource source && source.kind() == SourceKind.CELL;
    }

    private List<ItemId> parts(EnergySource cell) {
        return facts.procedure().items().stream()
                .filter(item -> item instanceof Part part && isTheThing(part, cell))
                .map(Item::id)
                .toList();
    }

    private static boolean isTheThing(Part part, EnergySource cell) {
        boolean hangsOnIt = part.tetheredBy().equals(cell.isolatedBy().stream().toList());
        return part.name().equalsIgnoreCase(cell.name())
                || hangsOnIt && cell.isolatedBy().isPresent() && speaksOfCells(part.name());
    }

    /** Whether a text speaks of cells. */
    static boolean speaksOfCells(String text) {
        return CELL.matcher(text).find();
    }

    /** The steps that heat something while there are cells at all, in page order. */
    List<Step> steps() {
        return cells.isEmpty() ? List.of() : heating();
    }

    private List<Step> heating() {
        return facts.procedure().steps().stream().filter(this::heats).toList();
    }

    private boolean heats(Step step) {
        boolean heater =
                Stream.concat(
                                step.tool().stream(),
                                step.actions().stream().flatMap(action -> action.tool().stream()))
                        .anyMatch(tool -> facts.index().tool(tool).kind() == ToolKind.HEATER);
        return heater || step.actions().stream().anyMatch(action -> released(action).isPresent());
    }

    /** The joint that an action releases by heat. */
    Optional<Joint> released(Action action) {
        return action.verb() == Verb.RELEASE
                ? action.item()
                        .map(facts.index()::item)
                        .filter(Joint.class::isInstance)
                        .map(Joint.class::cast)
                        .filter(HeatWork::byHeat)
                : Optional.empty();
    }

    private static boolean byHeat(Joint joint) {
        return joint.release()
                .filter(release -> release.method() == ReleaseMethod.HEAT)
                .isPresent();
    }

    /** The cells that are in the device when a step starts. */
    List<EnergySource> cellsIn(StepId step) {
        return cells.keySet().stream()
                .filter(cell -> cells.get(cell).stream().noneMatch(part -> away(part, step)))
                .toList();
    }

    private boolean away(ItemId part, StepId step) {
        int page = facts.index().page(step);
        return page > 0
                && facts.ledger().after(part, facts.procedure().steps().get(page - 1).id())
                        instanceof PartState state
                && state.away() > 0;
    }
}
