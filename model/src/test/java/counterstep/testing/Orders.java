package counterstep.testing;

import counterstep.model.Link;
import counterstep.model.Procedure;
import counterstep.model.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All orders of a small procedure that its links allow, one after the other. An oracle. */
public final class Orders {
    private final Procedure procedure;
    private final int most;
    private final List<List<Step>> orders = new ArrayList<>();

    private Orders(Procedure procedure, int most) {
        this.procedure = procedure;
        this.most = most;
        extend(new ArrayList<>());
    }

    /** The orders; empty if there are more than {@code most}. */
    public static Optional<List<List<Step>>> of(Procedure procedure, int most) {
        Orders orders = new Orders(procedure, most);
        return orders.orders.size() > most ? Optional.empty() : Optional.of(orders.orders);
    }

    private void extend(List<Step> done) {
        if (orders.size() > most) {
            return;
        }
        if (done.size() == procedure.steps().size()) {
            orders.add(List.copyOf(done));
            return;
        }
        for (Step step : procedure.steps()) {
            if (!done.contains(step) && ready(step, done)) {
                done.add(step);
                extend(done);
                done.remove(done.size() - 1);
            }
        }
    }

    private boolean ready(Step step, List<Step> done) {
        return procedure.links().stream()
                .filter(link -> link.after().equals(step.id()))
                .map(Link::before)
                .allMatch(before -> done.stream().anyMatch(one -> one.id().equals(before)));
    }
}
