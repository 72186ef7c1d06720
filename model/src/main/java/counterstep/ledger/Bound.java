package counterstep.ledger;

import counterstep.links.Precedence;
import counterstep.model.ItemId;
import java.util.List;

/**
 * Whether a condition surely holds in every order, where there are too many orders to walk. It may
 * doubt what is right, never trust what is wrong.
 */
final class Bound {
    private final Deeds deeds;
    private final Precedence precedence;
    private final LeastSum sums;

    Bound(Deeds deeds, Precedence precedence, LeastSum sums) {
        this.deeds = deeds;
        this.precedence = precedence;
        this.sums = sums;
    }

    boolean holds(Question question) {
        Demand demand = question.demand();
        Term first = demand.terms().get(0);
        return switch (first.counter()) {
            case DISTURBED -> first.factor() > 0 ? disturbed(question) : settled(question);
            case POWERLESS ->
                    first.factor() > 0
                            ? new PowerBound(deeds, precedence, sums).powerless(question)
                            : new PowerBound(deeds, precedence, sums).live(question);
            case SAFE -> new PowerBound(deeds, precedence, sums).safe(question);
            case WAITED, PROVED -> new PowerBound(deeds, precedence, sums).waited(question);
            case MISSING, ON_MAT, LOOSE, OFF, OPEN, RELEASED, LAID -> sums.holds(question);
            case NOTED, RESTORED, ISOLATED -> sums.holds(question);
        };
    }

    /** Something disturbs it before, and nothing can restore it between. */
    private boolean disturbed(Question question) {
        return steps(question, 1).stream()
                .filter(page -> before(page, question))
                .anyMatch(
                        page ->
                                steps(question, 0).stream()
                                        .allMatch(
                                                other ->
                                                        precedence.before(other, page)
                                                                || after(other, question)));
    }

    /** Whatever may have disturbed it has been restored since. */
    private boolean settled(Question question) {
        return steps(question, 1).stream()
                .filter(page -> !after(page, question))
                .allMatch(
                        page ->
                                steps(question, 0).stream()
                                        .anyMatch(
                                                other ->
                                                        before(other, question)
                                                                && precedence.before(page, other)));
    }

    /** The steps, the asking one included, that set 'disturbed' to a value. */
    private List<Integer> steps(Question question, int value) {
        ItemId setting = question.demand().about();
        return deeds.acting(setting).stream()
                .filter(
                        page ->
                                deeds.of(page).stream()
                                        .flatMap(deed -> deed.row().effects().stream())
                                        .filter(effect -> effect.item().equals(setting))
                                        .filter(effect -> effect.counter() == Counter.DISTURBED)
                                        .anyMatch(effect -> effect.amount() == value))
                .toList();
    }

    private boolean before(int page, Question question) {
        return question.page() == deeds.size() || precedence.before(page, question.page());
    }

    private boolean after(int page, Question question) {
        return question.page() < deeds.size() && precedence.before(question.page(), page);
    }
}
