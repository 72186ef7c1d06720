package counterstep.check.equipment;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Phrases;
import counterstep.model.Severity;
import counterstep.model.Tool;
import counterstep.toolchange.ToolUse;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One finding for all of them, since none has a place of its own. */
final class ToolNotUsed implements Check {
    @Override
    public About about() {
        return new About(
                "tool-not-used", Severity.HINT, "A tool is on the tool list, and no step uses it.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        List<Tool> unused = unused(facts);
        return unused.isEmpty() ? Stream.empty() : Stream.of(finding(unused));
    }

    static List<Tool> unused(Facts facts) {
        Set<Tool> used =
                facts.tooling().byFirstUse().stream()
                        .map(ToolUse::tool)
                        .collect(Collectors.toSet());
        return facts.procedure().tools().stream().filter(tool -> !used.contains(tool)).toList();
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        return Stream.of(
                new Fix("Take off the tool list", ToolList.of(facts).without(unused(facts))));
    }

    private Finding finding(List<Tool> unused) {
        String names = Phrases.list(unused.stream().map(Tool::name).toList());
        String verb = unused.size() == 1 ? " is" : " are";
        String message = names + verb + " on the tool list, but used in no step.";
        return about().finding(Phrases.sentence(message), List.of(), List.of());
    }
}
