package counterstep.cli;

import counterstep.links.Demand;
import counterstep.links.Precedence;
import counterstep.model.Index;
import counterstep.model.StepId;
import counterstep.toolchange.Contradictions;
import java.util.ArrayList;
import java.util.List;

/** What an order has to keep beside the links, a line each. */
final class PlanDemands {
    private PlanDemands() {}

    static List<String> of(Planned planned) {
        List<String> lines = new ArrayList<>();
        Index index = Index.of(planned.procedure());
        List<StepId> page = planned.demands().steps();
        for (Demand demand : planned.demands().all()) {
            String broken = demand.keptIn(page) ? "" : "; the page does not keep it";
            lines.add("Asked: " + Plain.line(demand.told(index)) + broken + ".");
        }
        if (planned.best().isEmpty() && planned.loop().isEmpty()) {
            lines.add(
                    "No order keeps all that is asked"
                            + torn(planned, index)
                            + ", so no fewest changes are given.");
        }
        return lines;
    }

    private static String torn(Planned planned, Index index) {
        List<String> torn =
                Contradictions.in(planned.procedure(), Precedence.of(planned.procedure())).stream()
                        .map(demand -> Plain.line(demand.told(index)))
                        .toList();
        return torn.isEmpty() ? "" : " (the links forbid: " + String.join("; ", torn) + ")";
    }
}
