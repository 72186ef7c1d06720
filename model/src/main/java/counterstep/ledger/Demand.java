package counterstep.ledger;

import counterstep.model.ItemId;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * What an action asks before it runs: a sum of counters of one item is at least a number.
 *
 * @param kind which condition this is
 * @param about whose counters
 * @param terms the sum
 * @param least what it must reach
 */
record Demand(FailureKind kind, ItemId about, List<Term> terms, int least) {
    Demand {
        terms = List.copyOf(terms);
    }

    /** The counters together are at least {@code least}. */
    static Demand atLeast(FailureKind kind, ItemId about, int least, Counter... counters) {
        return new Demand(kind, about, Arrays.stream(counters).map(Term::plus).toList(), least);
    }

    /** The counters together are at most {@code most}. */
    static Demand atMost(FailureKind kind, ItemId about, int most, Counter... counters) {
        return new Demand(kind, about, Arrays.stream(counters).map(Term::minus).toList(), -most);
    }

    /** The first counter exceeds the second by {@code least}. */
    static Demand excess(ItemId about, int least, Counter more, Counter less) {
        List<Term> terms = Stream.of(Term.plus(more), Term.minus(less)).toList();
        return new Demand(FailureKind.PRECONDITION, about, terms, least);
    }

    /** What no state can meet: the verb has no meaning for the item. */
    static Demand never(ItemId about) {
        return new Demand(FailureKind.PRECONDITION, about, List.of(), 1);
    }

    /** Whether no state can meet it. */
    boolean impossible() {
        return terms.isEmpty();
    }

    /** The sum in these counters. */
    int sum(Tally tally) {
        int sum = 0;
        for (Term term : terms) {
            sum += term.factor() * tally.get(about, term.counter());
        }
        return sum;
    }
}
