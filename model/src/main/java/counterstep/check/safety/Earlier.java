package counterstep.check.safety;

import counterstep.check.Facts;
import counterstep.ledger.Witness;
import counterstep.model.ItemId;
import counterstep.model.StepId;
import java.util.List;
import java.util.Optional;

/** Orders in which one step comes as early as the links allow. */
final class Earlier {
    private final Facts facts;
    private final List<StepId> order;

    private Earlier(Facts facts, List<StepId> order) {
        this.facts = facts;
        this.order = order;
    }

    /** None where the links contain a loop: then they allow no order at all. */
    static Optional<Earlier> of(Facts facts) {
        return facts.precedence().loop().isPresent()
                ? Optional.empty()
                : Optional.of(new Earlier(facts, facts.precedence().topological()));
    }

    /** The step comes right after those that have to be before it; the item is what it touches. */
    Witness witness(StepId step, ItemId about) {
        List<StepId> first =
                order.stream().filter(other -> facts.precedence().before(other, step)).toList();
        return new Witness(first, Optional.of(step), about, List.of(), false);
    }
}
