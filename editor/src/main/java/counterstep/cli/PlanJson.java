package counterstep.cli;

import counterstep.links.Demand;
import counterstep.model.ItemId;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.plan.CriticalPath;
import counterstep.plan.Durations;
import counterstep.plan.StepTimes;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A plan as other programs read it: decimal minutes, steps by id; times are null with a loop. */
final class PlanJson {
    private PlanJson() {}

    static Map<String, Object> of(Planned planned) {
        Optional<CriticalPath> path = planned.criticalPath();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("minutes", Minutes.decimal(Durations.total(planned.procedure())));
        json.put("times", EstimateJson.of(planned.estimated()));
        json.put("criticalMinutes", path.map(found -> Minutes.decimal(found.seconds())));
        json.put("criticalPaths", path.map(PlanJson::paths).orElse(List.of()));
        json.put("morePaths", path.map(CriticalPath::morePaths).orElse(false));
        json.put("expected", ExpectedJson.of(planned));
        json.put("toolChanges", toolChanges(planned));
        json.put("toolChangeSeconds", planned.toolTime().seconds());
        json.put("crews", planned.crews().stream().map(CrewJson::of).toList());
        json.put(
                "steps",
                planned.procedure().steps().stream()
                        .map(
                                step ->
                                        step(
                                                step,
                                                planned.estimated(),
                                                path.map(found -> found.times().get(step.id()))))
                        .toList());
        return json;
    }

    private static List<List<String>> paths(CriticalPath path) {
        return path.paths().stream()
                .map(steps -> steps.stream().map(StepId::toString).toList())
                .toList();
    }

    private static Map<String, Object> toolChanges(Planned planned) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("page", planned.toolChanges().count());
        json.put("fewest", planned.best().map(best -> best.fewest().count()));
        json.put("atLeast", planned.best().map(best -> best.fewest().atLeast()));
        json.put("proved", planned.best().map(best -> best.fewest().proved()));
        json.put(
                "order",
                planned.best().map(best -> best.order().stream().map(StepId::toString).toList()));
        json.put(
                "constraints",
                planned.demands().all().stream()
                        .map(demand -> constraint(demand, planned))
                        .toList());
        return json;
    }

    private static Map<String, Object> constraint(Demand demand, Planned planned) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("kind", demand.kind());
        json.put("steps", demand.steps().stream().map(StepId::toString).toList());
        json.put("item", demand.item().map(ItemId::toString));
        json.put("keptOnPage", demand.keptIn(planned.demands().steps()));
        json.put("kept", planned.best().map(best -> demand.keptIn(best.order())));
        return json;
    }

    private static Map<String, Object> step(
            Step step, Estimated estimated, Optional<StepTimes> times) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", step.id().toString());
        json.put("minutes", Minutes.decimal(Durations.seconds(step)));
        json.put("timeSource", estimated.source(step));
        json.put("earliestStart", times.map(StepTimes::earliestStart).map(Minutes::decimal));
        json.put("earliestFinish", times.map(StepTimes::earliestFinish).map(Minutes::decimal));
        json.put("latestStart", times.map(StepTimes::latestStart).map(Minutes::decimal));
        json.put("latestFinish", times.map(StepTimes::latestFinish).map(Minutes::decimal));
        json.put("totalFloat", times.map(StepTimes::totalFloat).map(Minutes::decimal));
        json.put("freeFloat", times.map(StepTimes::freeFloat).map(Minutes::decimal));
        return json;
    }
}
