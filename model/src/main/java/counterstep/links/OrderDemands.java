package counterstep.links;

import counterstep.model.GroupRule;
import counterstep.model.OrderRule;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepGroup;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * All that a document asks of an order of its steps: links, groups, and the rules that it sets for
 * phases and for patterns of fasteners.
 */
public final class OrderDemands {
    private final Precedence precedence;
    private final List<StepId> steps;
    private final List<Demand> all;
    private final List<PhaseOrder> phases;

    private OrderDemands(Precedence precedence, List<Demand> all) {
        this.precedence = precedence;
        this.all = List.copyOf(all);
        steps = precedence.steps();
        phases =
                all.stream()
                        .filter(PhaseOrder.class::isInstance)
                        .map(PhaseOrder.class::cast)
                        .toList();
    }

    /**
     * Reads what a document asks.
     *
     * @param precedence of that document
     */
    public static OrderDemands of(Procedure procedure, Precedence precedence) {
        List<Demand> all = new ArrayList<>();
        if (procedure.orderRules().contains(OrderRule.PHASES_IN_ORDER)) {
            all.add(
                    new PhaseOrder(
                            procedure.steps().stream()
                                    .collect(Collectors.toMap(Step::id, Step::phase))));
        }
        procedure.groups().forEach(group -> all.add(company(group)));
        if (procedure.orderRules().contains(OrderRule.PATTERNS_WHOLE)) {
            all.addAll(Patterns.in(procedure));
        }
        return new OrderDemands(precedence, all);
    }

    private static Company company(StepGroup group) {
        return new Company(
                group.rule() == GroupRule.RIGHT_AFTER
                        ? Company.Reason.RIGHT_AFTER
                        : Company.Reason.TOGETHER,
                group.steps().stream().distinct().toList(),
                Optional.empty());
    }

    /** The same links and one thing more, nothing else. */
    public OrderDemands only(Demand demand) {
        return new OrderDemands(precedence, List.of(demand));
    }

    /** What is asked beside the links. */
    public List<Demand> all() {
        return all;
    }

    /** The steps that stay in company. */
    public List<Company> companies() {
        return all.stream().filter(Company.class::isInstance).map(Company.class::cast).toList();
    }

    /** The steps in page order. */
    public List<StepId> steps() {
        return steps;
    }

    /** Place of a step in page order, from 0. */
    public int page(StepId step) {
        return precedence.page(step);
    }

    /**
     * Whether a chain of links puts one step before another, or their phases do.
     *
     * @param earlier place in page order, from 0
     * @param later the same
     */
    public boolean before(int earlier, int later) {
        return precedence.before(earlier, later)
                || !phases.isEmpty() && phases.get(0).before(steps.get(earlier), steps.get(later));
    }

    /** Whether an order keeps all that is asked beside the links. */
    public boolean keptIn(List<StepId> order) {
        return all.stream().allMatch(demand -> demand.keptIn(order));
    }

    /** What an order does not keep. */
    public List<Demand> brokenIn(List<StepId> order) {
        return all.stream().filter(demand -> !demand.keptIn(order)).toList();
    }
}
