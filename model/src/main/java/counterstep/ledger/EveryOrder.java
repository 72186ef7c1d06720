package counterstep.ledger;

import counterstep.links.Precedence;
import counterstep.model.FastenerSet;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.LinkEnds;
import counterstep.model.Setting;
import counterstep.model.StepId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which conditions on actions fail in some order that the links allow. What has been done when a
 * step starts is any set of steps that contains all that must come before it, nothing that must
 * come after it, and with each step all before that. A counter that actions only add to is least
 * over such sets by a minimum cut; the others are walked along the few steps that act on the item.
 * No order of all steps is ever enumerated.
 */
public final class EveryOrder {
    private final Index index;
    private final Precedence precedence;
    private final Deeds deeds;
    private final Answers answers;
    private final Map<Violation, List<Question>> violations = new LinkedHashMap<>();

    private EveryOrder(Deeds deeds, Precedence precedence, int limit) {
        this.index = deeds.index();
        this.precedence = precedence;
        this.deeds = deeds;
        this.answers = new Answers(deeds, precedence, limit);
        if (precedence.loop().isEmpty()) {
            for (int page = 0; page < deeds.size(); page++) {
                ask(page);
            }
            index.procedure().items().forEach(this::askTheEnd);
        }
    }

    /**
     * Examines a procedure; where its links lead in a ring there is no order, and nothing fails.
     */
    public static EveryOrder of(Deeds deeds, Precedence precedence) {
        return new EveryOrder(deeds, precedence, Walk.LIMIT);
    }

    /** The same with a limit of its own to what is walked before a bound is taken. */
    static EveryOrder of(Deeds deeds, Precedence precedence, int limit) {
        return new EveryOrder(deeds, precedence, limit);
    }

    /** The conditions that fail in some order, by step in page order, those of the end last. */
    public List<Violation> violations() {
        return List.copyOf(violations.keySet());
    }

    /** A smallest set of steps after which the condition fails, in an order that makes it fail. */
    public Witness witness(Violation violation) {
        return witness(violation, answers);
    }

    /** The same under other links that leave it failing. */
    Witness witness(Violation violation, Answers under) {
        return violations.get(violation).stream()
                .filter(question -> !under.holds(question))
                .map(under::witness)
                .min(Comparator.comparingInt(witness -> witness.first().size()))
                .orElseThrow();
    }

    /**
     * Links that mend these conditions, none of which can be left out; they keep page order where
     * they can. Empty where no link can mend one of them.
     */
    public Optional<List<LinkEnds>> missingLinks(List<Violation> wanted) {
        return new MissingLinks(this, precedence, wanted).links();
    }

    /** What the steps do, to ask again under other links. */
    Deeds deeds() {
        return deeds;
    }

    /** Whether a condition fails under these answers. */
    boolean fails(Violation violation, Answers under) {
        return violations.get(violation).stream().anyMatch(question -> !under.holds(question));
    }

    /** An order in which some of each of two items lie on the mat at once, if there is one. */
    public Optional<Witness> together(ItemId one, ItemId other) {
        return precedence.loop().isPresent()
                ? Optional.empty()
                : new Together(deeds, precedence).witness(index.item(one), index.item(other));
    }

    private void ask(int page) {
        List<Deeds.Deed> actions = deeds.of(page);
        for (int action = 0; action < actions.size(); action++) {
            for (Demand demand : actions.get(action).row().demands()) {
                ask(new Question(page, action, demand));
            }
        }
    }

    /** All else adds up the same in any order, and page order tells it. */
    private void askTheEnd(Item item) {
        if (item instanceof FastenerSet) {
            askTheEnd(Demand.atMost(FailureKind.CLOSE, item.id(), 0, Counter.LOOSE));
        } else if (item instanceof Setting) {
            askTheEnd(Demand.atMost(FailureKind.CLOSE, item.id(), 0, Counter.DISTURBED));
        }
    }

    private void askTheEnd(Demand demand) {
        ask(new Question(deeds.size(), 0, demand));
    }

    private void ask(Question question) {
        if (!answers.holds(question)) {
            violations
                    .computeIfAbsent(violation(question), fresh -> new ArrayList<>())
                    .add(question);
        }
    }

    private Violation violation(Question question) {
        boolean end = question.page() == deeds.size();
        Optional<StepId> step =
                end ? Optional.empty() : Optional.of(precedence.steps().get(question.page()));
        Demand demand = question.demand();
        return new Violation(step, question.action(), demand.kind(), demand.about());
    }
}
