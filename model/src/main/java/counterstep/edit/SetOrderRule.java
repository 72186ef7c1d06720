package counterstep.edit;

import counterstep.model.OrderRule;
import counterstep.model.Procedure;
import java.util.ArrayList;
import java.util.List;

/**
 * Sets whether a document asks something of every order of its steps.
 *
 * @param rule what
 * @param asked whether it does
 */
public record SetOrderRule(OrderRule rule, boolean asked) implements Edit {
    @Override
    public String name() {
        return switch (rule) {
            case PHASES_IN_ORDER -> asked ? "Keep phases in order" : "Let phases mix";
            case PATTERNS_WHOLE ->
                    asked ? "Keep fastener patterns whole" : "Let fastener patterns be parted";
        };
    }

    @Override
    public Procedure apply(Procedure before) {
        List<OrderRule> rules = new ArrayList<>(before.orderRules());
        rules.remove(rule);
        if (asked) {
            rules.add(rule);
        }
        return before.draft().orderRules(rules).procedure();
    }
}
