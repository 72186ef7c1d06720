package counterstep.ledger;

import counterstep.links.Precedence;
import counterstep.model.EnergySource;
import counterstep.model.ItemId;
import counterstep.model.Verb;
import counterstep.model.Wait;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What is sure of a source in every order, where there are too many orders to walk. */
final class PowerBound {
    private final Deeds deeds;
    private final Precedence precedence;
    private final LeastSum sums;

    PowerBound(Deeds deeds, Precedence precedence, LeastSum sums) {
        this.deeds = deeds;
        this.precedence = precedence;
        this.sums = sums;
    }

    /** It is isolated, and proved dead or waited for as it asks. */
    boolean safe(Question question) {
        EnergySource source = source(question);
        return powerless(question)
                && (source.mustProveDead()
                        ? proved(question)
                        : secondsSince(question) >= source.waitSeconds());
    }

    /** The wait is long enough. */
    boolean waited(Question question) {
        return secondsSince(question) >= question.demand().least();
    }

    /** One of the ways to isolate it is in force whatever comes first. */
    boolean powerless(Question question) {
        return chain(question)
                .flatMap(source -> Stream.concat(own(source), plug(source)))
                .anyMatch(demand -> sums.holds(asking(question, demand)));
    }

    private static Stream<Demand> own(EnergySource source) {
        return Stream.of(Demand.atLeast(FailureKind.ENERGY, source.id(), 1, Counter.ISOLATED));
    }

    private Stream<Demand> plug(EnergySource source) {
        return source.isolatedBy().map(deeds.index()::item).stream()
                .map(plug -> Rest.released(FailureKind.ENERGY, plug, false));
    }

    /** None of the ways to isolate it is in force. */
    boolean live(Question question) {
        return chain(question)
                .flatMap(
                        source ->
                                Stream.concat(
                                        Stream.of(none(source.id(), Counter.ISOLATED)),
                                        source.isolatedBy().stream().flatMap(PowerBound::closed)))
                .allMatch(demand -> sums.holds(asking(question, demand)));
    }

    private static Stream<Demand> closed(ItemId plug) {
        return Stream.of(Counter.OPEN, Counter.MISSING, Counter.RELEASED, Counter.OFF)
                .map(counter -> none(plug, counter));
    }

    private static Demand none(ItemId item, Counter counter) {
        return Demand.atMost(FailureKind.ENERGY, item, 0, counter);
    }

    private boolean proved(Question question) {
        ItemId source = question.demand().about();
        return IntStream.range(0, deeds.size())
                .filter(page -> lasts(page, question))
                .anyMatch(
                        page ->
                                before(page, question)
                                        .anyMatch(
                                                deed ->
                                                        deed.action().verb() == Verb.PROVE_DEAD
                                                                && deed.action()
                                                                        .item()
                                                                        .filter(source::equals)
                                                                        .isPresent()));
    }

    /** The waits that surely fall between the isolation and the question. */
    private int secondsSince(Question question) {
        return deeds.waiting().stream()
                .filter(page -> lasts(page, question))
                .filter(page -> isolatedAt(page, question))
                .flatMap(page -> before(page, question))
                .mapToInt(deed -> deed.action().waiting().map(Wait::seconds).orElse(0))
                .sum();
    }

    private boolean isolatedAt(int page, Question question) {
        return powerless(new Question(page, 0, question.demand()));
    }

    /** The actions of a step that are done before the question is asked. */
    private Stream<Deeds.Deed> before(int page, Question question) {
        if (page == question.page()) {
            return deeds.of(page).subList(0, question.action() + own(question)).stream();
        }
        boolean sure = question.page() == deeds.size() || precedence.before(page, question.page());
        return sure ? deeds.of(page).stream() : Stream.empty();
    }

    /** A proof comes after the wait that stands on the same action. */
    private static int own(Question question) {
        boolean proof = question.demand().terms().get(0).counter() == Counter.WAITED;
        return proof ? 1 : 0;
    }

    /** Nothing that gives power back can come between a step and the question. */
    private boolean lasts(int page, Question question) {
        return restoring(question)
                .allMatch(
                        other ->
                                precedence.before(other, page)
                                        || (question.page() < deeds.size()
                                                && precedence.before(question.page(), other)));
    }

    private Stream<Integer> restoring(Question question) {
        List<ItemId> items =
                chain(question)
                        .flatMap(
                                source ->
                                        Stream.concat(
                                                Stream.of(source.id()),
                                                source.isolatedBy().stream()))
                        .toList();
        return items.stream()
                .flatMap(item -> deeds.acting(item).stream())
                .filter(
                        page ->
                                deeds.of(page).stream()
                                        .flatMap(deed -> deed.row().effects().stream())
                                        .filter(effect -> items.contains(effect.item()))
                                        .anyMatch(effect -> effect.amount() < 0));
    }

    private Stream<EnergySource> chain(Question question) {
        return deeds.around().chain(source(question)).stream();
    }

    private EnergySource source(Question question) {
        return (EnergySource) deeds.index().item(question.demand().about());
    }

    private static Question asking(Question question, Demand demand) {
        return new Question(question.page(), question.action(), demand);
    }
}
