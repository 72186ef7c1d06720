package counterstep.cli;

import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.plan.ExpectedPath;
import counterstep.plan.ExpectedTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the work is expected to take and how far that spreads, as other programs read it. */
final class ExpectedJson {
    private ExpectedJson() {}

    static Map<String, Object> of(Planned planned) {
        Optional<ExpectedPath> path = planned.expected();
        Optional<ExpectedTime> length = path.map(ExpectedPath::length);
        Map<String, Object> json = new LinkedHashMap<>();
        put(json, ExpectedTime.total(planned.procedure()));
        json.put("criticalMinutes", length.map(ExpectedTime::seconds).map(Minutes::ofExact));
        json.put("criticalDeviation", length.map(ExpectedTime::deviation).map(Minutes::ofExact));
        json.put("criticalPath", path.map(ExpectedJson::ids).orElse(List.of()));
        json.put(
                "steps",
                planned.procedure().steps().stream()
                        .filter(ExpectedTime::ranged)
                        .map(ExpectedJson::step)
                        .toList());
        return json;
    }

    private static void put(Map<String, Object> json, ExpectedTime time) {
        json.put("minutes", Minutes.ofExact(time.seconds()));
        json.put("deviation", Minutes.ofExact(time.deviation()));
    }

    private static List<String> ids(ExpectedPath path) {
        return path.steps().stream().map(StepId::toString).toList();
    }

    /** Waits included, as in all minutes of a step. */
    private static Map<String, Object> step(Step step) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", step.id().toString());
        put(json, ExpectedTime.of(step));
        return json;
    }
}
