package counterstep.check.equipment;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Phrases;
import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.model.Tool;
import counterstep.toolchange.ToolUse;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A driver that follows from a fastener's drive and that the tool list lacks. A document without a
 * tool list states nothing that it could differ from.
 */
final class ToolNotListed implements Check {
    @Override
    public About about() {
        return new About(
                "tool-not-listed",
                Severity.HINT,
                "A fastener needs a tool that is not on the tool list.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        return facts.procedure().tools().isEmpty()
                ? Stream.empty()
                : unlisted(facts).map(use -> finding(facts, use));
    }

    private static Stream<ToolUse> unlisted(Facts facts) {
        Set<Tool> listed = new HashSet<>(facts.procedure().tools());
        return facts.tooling().byFirstUse().stream().filter(use -> !listed.contains(use.tool()));
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        return unlisted(facts)
                .filter(use -> use.steps().equals(finding.steps()))
                .map(use -> new Fix("Add to tool list", ToolList.of(facts).adding(use.tool())));
    }

    private Finding finding(Facts facts, ToolUse use) {
        String message =
                use.tool().name()
                        + " is used in "
                        + facts.phrases().steps(use.steps())
                        + ", but is not on the tool list.";
        return about().finding(Phrases.sentence(message), use.steps(), turned(facts, use));
    }

    /** The fasteners that need it. */
    private static List<ItemId> turned(Facts facts, ToolUse use) {
        return use.steps().stream()
                .map((StepId step) -> facts.index().step(step))
                .flatMap(step -> step.actions().stream())
                .flatMap((Action action) -> action.item().stream())
                .distinct()
                .filter(
                        item ->
                                facts.index().item(item) instanceof FastenerSet set
                                        && set.drive().equals(use.tool().drive()))
                .toList();
    }
}
