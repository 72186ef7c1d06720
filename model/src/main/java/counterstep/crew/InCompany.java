package counterstep.crew;

import counterstep.links.Company;
import counterstep.links.OrderDemands;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The steps between which nothing else is done. Groups and patterns that share a step are one lot.
 * A lot is done in the order wished where that keeps all that is asked, else in another that does.
 */
final class InCompany {
    private final OrderDemands demands;
    private final List<List<StepId>> lots = new ArrayList<>();

    /**
     * Lots of a document.
     *
     * @param wished an order of its steps that the links allow
     * @param kept an order that keeps all that is asked
     */
    InCompany(OrderDemands demands, List<StepId> wished, List<StepId> kept) {
        this.demands = demands;
        for (Set<StepId> lot : merged(demands.companies())) {
            List<StepId> first = inOrderOf(wished, lot);
            lots.add(isKeptIn(first) ? first : inOrderOf(kept, lot));
        }
    }

    private static List<Set<StepId>> merged(List<Company> companies) {
        List<Set<StepId>> merged = new ArrayList<>();
        for (Company company : companies) {
            Set<StepId> lot = new LinkedHashSet<>(company.steps());
            List<Set<StepId>> sharing =
                    merged.stream().filter(other -> !Collections.disjoint(other, lot)).toList();
            sharing.forEach(lot::addAll);
            merged.removeAll(sharing);
            merged.add(lot);
        }
        return merged;
    }

    private static List<StepId> inOrderOf(List<StepId> order, Set<StepId> lot) {
        return lot.stream().sorted(Comparator.comparing(order::indexOf)).toList();
    }

    private boolean isKeptIn(List<StepId> lot) {
        return demands.all().stream()
                .filter(demand -> lot.containsAll(demand.steps()))
                .allMatch(demand -> demand.keptIn(lot));
    }

    /** Two or more steps each, in the order in which they are done. */
    List<List<StepId>> lots() {
        return lots;
    }

    /** Whether a lot could be done in another order inside. */
    boolean isChosen() {
        return lots.stream().anyMatch(lot -> !isInItsOwnOrder(lot) && !isChain(lot));
    }

    private boolean isInItsOwnOrder(List<StepId> lot) {
        return demands.companies().stream()
                .filter(company -> company.reason() == Company.Reason.RIGHT_AFTER)
                .anyMatch(company -> company.steps().equals(lot));
    }

    private boolean isChain(List<StepId> lot) {
        for (int at = 1; at < lot.size(); at++) {
            if (!demands.before(demands.page(lot.get(at - 1)), demands.page(lot.get(at)))) {
                return false;
            }
        }
        return true;
    }
}
