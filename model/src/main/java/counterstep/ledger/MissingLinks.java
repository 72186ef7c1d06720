package counterstep.ledger;

import counterstep.links.Precedence;
import counterstep.model.LinkEnds;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds links that exclude the orders that go wrong. A set of steps after which a step fails is
 * excluded by a link that takes one of them out of it, or forces another into it; of these one that
 * keeps page order and mends most is taken, until nothing fails; then each in turn is left out and
 * stays out if nothing comes back. What stays is irredundant, not always the fewest: that is a
 * hitting set.
 */
final class MissingLinks {
    private final EveryOrder given;
    private final List<Violation> wanted;
    private final List<LinkEnds> chosen = new ArrayList<>();
    private Precedence precedence;
    private Answers now;
    private boolean possible = true;

    MissingLinks(EveryOrder given, Precedence precedence, List<Violation> wanted) {
        this.given = given;
        this.wanted = wanted;
        this.precedence = precedence;
        this.now = new Answers(given.deeds(), precedence);
        for (Violation violation : wanted) {
            while (possible && given.fails(violation, now)) {
                Optional<LinkEnds> best = best(violation);
                possible = best.isPresent();
                best.ifPresent(this::add);
            }
        }
        if (possible) {
            leaveOut(precedence);
        }
    }

    Optional<List<LinkEnds>> links() {
        Comparator<LinkEnds> asOnThePage =
                Comparator.comparingInt((LinkEnds link) -> precedence.page(link.before()))
                        .thenComparingInt(link -> precedence.page(link.after()));
        return possible
                ? Optional.of(chosen.stream().sorted(asOnThePage).toList())
                : Optional.empty();
    }

    private void add(LinkEnds link) {
        chosen.add(link);
        precedence = precedence.with(link);
        now = new Answers(given.deeds(), precedence);
    }

    /** Mends at once if one does; then keeps page order; then joins steps near each other. */
    private Optional<LinkEnds> best(Violation violation) {
        return candidates(violation)
                .min(
                        Comparator.comparing((LinkEnds link) -> distance(link) < 0)
                                .thenComparing(link -> given.fails(violation, under(link)))
                                .thenComparingInt(link -> Math.abs(distance(link))));
    }

    private Answers under(LinkEnds link) {
        return new Answers(given.deeds(), precedence.with(link));
    }

    private int distance(LinkEnds link) {
        return precedence.page(link.after()) - precedence.page(link.before());
    }

    private Stream<LinkEnds> candidates(Violation violation) {
        Witness witness = given.witness(violation, now);
        List<StepId> concerned =
                now.concerned(violation.about()).stream().map(precedence.steps()::get).toList();
        Stream<LinkEnds> around =
                witness.then().stream().flatMap(step -> around(step, concerned, witness.first()));
        return Stream.concat(around, within(concerned, witness.first()))
                .filter(link -> !precedence.before(link.after(), link.before()));
    }

    /** The failing step before one that spoils it, or after one that mends it. */
    private Stream<LinkEnds> around(StepId step, List<StepId> concerned, List<StepId> first) {
        return concerned.stream()
                .filter(other -> !other.equals(step) && !precedence.before(other, step))
                .map(
                        other ->
                                first.contains(other)
                                        ? new LinkEnds(step, other)
                                        : new LinkEnds(other, step));
    }

    /** Where the order inside matters: two steps of the set as the page has them. */
    private Stream<LinkEnds> within(List<StepId> concerned, List<StepId> first) {
        List<StepId> inside = concerned.stream().filter(first::contains).toList();
        return inside.stream()
                .flatMap(
                        one ->
                                inside.stream()
                                        .filter(other -> goesBefore(one, other))
                                        .map(other -> new LinkEnds(one, other)));
    }

    private boolean goesBefore(StepId one, StepId other) {
        return precedence.page(one) < precedence.page(other) && !precedence.before(one, other);
    }

    private void leaveOut(Precedence original) {
        for (LinkEnds link : List.copyOf(chosen)) {
            List<LinkEnds> others = chosen.stream().filter(one -> !one.equals(link)).toList();
            Precedence without = original;
            for (LinkEnds other : others) {
                without = without.with(other);
            }
            Answers then = new Answers(given.deeds(), without);
            if (wanted.stream().noneMatch(violation -> given.fails(violation, then))) {
                chosen.remove(link);
            }
        }
    }
}
