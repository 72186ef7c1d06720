package counterstep.cli;

import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.StepId;
import counterstep.reach.LeftOut;
import counterstep.reach.Reach;
import counterstep.review.Review;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The steps to some parts as other programs read them. */
final class ReachJson {
    private ReachJson() {}

    static Map<String, Object> of(Reach reach) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("items", reach.items().stream().map(ItemId::toString).toList());
        json.put("of", reach.whole().steps().size());
        json.put("steps", reach.steps().stream().map(StepId::toString).toList());
        json.put("errors", Review.of(reach.procedure()).count(Severity.ERROR));
        json.put("leftOut", leftOut(reach.leftOut()));
        return json;
    }

    private static List<Map<String, Object>> leftOut(List<LeftOut> steps) {
        return steps.stream().map(ReachJson::leftOut).toList();
    }

    private static Map<String, Object> leftOut(LeftOut left) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("step", left.step().toString());
        json.put("reason", left.reason());
        return json;
    }
}
