package counterstep.cli;

import counterstep.estimate.Estimate;
import counterstep.estimate.Row;
import counterstep.estimate.TimeShares;
import counterstep.model.StepId;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is measured and what is estimated, as other programs read it. */
final class EstimateJson {
    private EstimateJson() {}

    static Map<String, Object> of(Estimated estimated) {
        TimeShares shares = estimated.shares();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("measured", Minutes.decimal(shares.measured()));
        json.put("estimatedByWriter", Minutes.decimal(shares.estimated()));
        json.put("estimatedByFigures", Minutes.decimal(shares.reckoned()));
        json.put("waits", Minutes.decimal(shares.waits()));
        json.put("figures", estimated.estimates().source());
        json.put("figuresCounted", estimated.counted());
        json.put("steps", shares.untimed().stream().map(step -> untimed(step, estimated)).toList());
        return json;
    }

    private static Map<String, Object> untimed(StepId step, Estimated estimated) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("id", step.toString());
        json.put(
                "minutes",
                estimated.estimates().of(step).map(Estimate::seconds).map(Minutes::decimal));
        json.put("reason", estimated.estimates().none().getOrDefault(step, ""));
        json.put(
                "actions",
                estimated.estimates().of(step).map(Estimate::rows).orElse(List.of()).stream()
                        .map(EstimateJson::row)
                        .toList());
        return json;
    }

    private static Map<String, Object> row(Row row) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("action", row.what());
        json.put("pieces", row.times());
        json.put("workSeconds", BigDecimal.valueOf(row.work()));
        json.put("handlingSeconds", BigDecimal.valueOf(row.handling()));
        json.put("source", row.source());
        return json;
    }
}
