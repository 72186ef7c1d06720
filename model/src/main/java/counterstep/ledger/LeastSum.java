package counterstep.ledger;

import counterstep.links.Closure;
import counterstep.links.Precedence;
import counterstep.model.ItemId;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The least that a sum of counters can be when an action starts, over all orders that the links
 * allow. Exact for counters that actions only add to. Loose fasteners are counted as few as they
 * can be where many are asked, and as many where few are: then it is a bound.
 */
final class LeastSum {
    private final Deeds deeds;
    private final Precedence precedence;
    private final Map<ItemId, Boolean> loosened = new HashMap<>();
    private final Map<ItemId, Boolean> taken = new HashMap<>();

    LeastSum(Deeds deeds, Precedence precedence) {
        this.deeds = deeds;
        this.precedence = precedence;
    }

    /** Whether the sum of a condition does not depend on the order of what was done. */
    boolean exact(Demand demand) {
        for (Term term : demand.terms()) {
            if (!adds(term.counter(), demand.about())) {
                return false;
            }
        }
        return true;
    }

    private boolean adds(Counter counter, ItemId about) {
        return switch (counter) {
            case MISSING, ON_MAT, OFF, OPEN, RELEASED, LAID, NOTED, ISOLATED -> true;
            case LOOSE -> !(loosened(about) && taken(about));
            case DISTURBED, RESTORED, POWERLESS, WAITED, PROVED, SAFE -> false;
        };
    }

    private boolean loosened(ItemId item) {
        return loosened.computeIfAbsent(
                item,
                id ->
                        effects(id)
                                .anyMatch(
                                        effect ->
                                                effect.counter() == Counter.LOOSE
                                                        && effect.change() == Effect.Change.ADD
                                                        && effect.amount() != 0));
    }

    private boolean taken(ItemId item) {
        return taken.computeIfAbsent(
                item,
                id ->
                        effects(id)
                                .anyMatch(
                                        effect ->
                                                effect.change()
                                                        == Effect.Change.TAKE_WHAT_IS_THERE));
    }

    private Stream<Effect> effects(ItemId item) {
        return deeds.acting(item).stream()
                .flatMap(page -> deeds.of(page).stream())
                .flatMap(deed -> deed.row().effects().stream())
                .filter(effect -> effect.item().equals(item));
    }

    /** Whether the condition holds whatever is done first. */
    boolean holds(Question question) {
        List<Integer> free = new ArrayList<>();
        int sum = certain(question, free);
        int[] weights = weights(question, free);
        int worst = sum;
        for (int weight : weights) {
            worst += Math.min(0, weight);
        }
        int least = question.demand().least();
        return worst >= least || sum + cheapest(free, weights).weight() >= least;
    }

    /** The places in page order that bring the least, beyond those that come before in any case. */
    BitSet worst(Question question) {
        List<Integer> free = new ArrayList<>();
        certain(question, free);
        BitSet pages = new BitSet();
        cheapest(free, weights(question, free)).places().stream()
                .map(free::get)
                .forEach(pages::set);
        return pages;
    }

    private Closure cheapest(List<Integer> free, int[] weights) {
        return Closure.cheapest(
                weights, (one, other) -> precedence.before(free.get(one), free.get(other)));
    }

    private int[] weights(Question question, List<Integer> free) {
        return free.stream()
                .mapToInt(page -> weight(question.demand(), page, deeds.of(page).size()))
                .toArray();
    }

    /** What comes before in any case adds up to this; what may come before or after is listed. */
    private int certain(Question question, List<Integer> free) {
        int page = question.page();
        boolean end = page == deeds.size();
        int sum = end ? 0 : weight(question.demand(), page, question.action());
        for (int other : deeds.acting(question.demand().about())) {
            if (end || precedence.before(other, page)) {
                sum += weight(question.demand(), other, deeds.of(other).size());
            } else if (other != page && !precedence.before(page, other)) {
                free.add(other);
            }
        }
        return sum;
    }

    /** What the first so many actions of a step add. */
    private int weight(Demand demand, int page, int actions) {
        int sum = 0;
        for (Deeds.Deed deed : deeds.of(page).subList(0, actions)) {
            for (Effect effect : deed.row().effects()) {
                if (effect.item().equals(demand.about())) {
                    sum += weight(demand, effect);
                }
            }
        }
        return sum;
    }

    private int weight(Demand demand, Effect effect) {
        int sum = 0;
        for (Term term : demand.terms()) {
            if (term.counter() == effect.counter()) {
                sum +=
                        switch (effect.change()) {
                            case ADD -> term.factor() * effect.amount();
                            case SET -> 0;
                            case TAKE_WHAT_IS_THERE -> taken(demand.about(), term, effect);
                        };
            }
        }
        return sum;
    }

    private int taken(ItemId item, Term term, Effect effect) {
        return term.factor() > 0 && loosened(item) ? -effect.amount() : 0;
    }
}
