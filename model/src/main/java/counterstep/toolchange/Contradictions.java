package counterstep.toolchange;

import counterstep.links.Demand;
import counterstep.links.OrderDemands;
import counterstep.links.Precedence;
import counterstep.model.Procedure;
import java.util.List;

/** Why no order of the steps gives all that a document asks. */
public final class Contradictions {
    private Contradictions() {}

    /**
     * What cannot be kept beside the links, one thing for itself; none where each could be and only
     * several contradict each other.
     *
     * @param precedence of that document, without a loop
     */
    public static List<Demand> in(Procedure procedure, Precedence precedence) {
        OrderDemands demands = OrderDemands.of(procedure, precedence);
        ToolWords words = new ToolWords(procedure, Tooling.of(procedure));
        return demands.all().stream()
                .filter(demand -> Choices.of(demands.only(demand), words).isImpossible())
                .toList();
    }
}
