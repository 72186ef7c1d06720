package counterstep.check.wording;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Fix;
import counterstep.check.Phrases;
import counterstep.edit.ChangeStep;
import counterstep.model.Action;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Severity;
import counterstep.model.Step;
import counterstep.words.Sentence;
import counterstep.words.Token;
import counterstep.words.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A technician goes by the text, the running count on the bench sheet by the actions (common
 * practice). Where a number may be a part of the count, or count another item, nothing is said.
 */
final class NumberDiffersFromCount implements Check {
    @Override
    public About about() {
        return new About(
                "number-differs-from-count",
                Severity.HINT,
                "A step's text states another number than its actions.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        Optional<Vocabulary> words = facts.wording().vocabulary();
        return words.stream()
                .flatMap(vocabulary -> facts.procedure().steps().stream())
                .flatMap(step -> findings(facts, step, words.get()));
    }

    private Stream<Finding> findings(Facts facts, Step step, Vocabulary words) {
        Counted title = new Counted(facts.index(), step, titleOf(step, words), words);
        Counted text = new Counted(facts.index(), step, facts.wording().sentences(step), words);
        return Stream.concat(title.differing().stream(), text.differing().stream())
                .distinct()
                .map(item -> finding(facts, step, item, said(title, text, item)));
    }

    private static List<Sentence> titleOf(Step step, Vocabulary words) {
        return step.actions().isEmpty() ? List.of() : words.sentences(step.title());
    }

    private static Token said(Counted title, Counted text, ItemId item) {
        return Stream.of(text, title)
                .filter(read -> read.differing().contains(item))
                .flatMap(read -> read.numbers(item).stream())
                .findFirst()
                .orElseThrow();
    }

    private Finding finding(Facts facts, Step step, ItemId item, Token said) {
        int count = actionsOn(step, item).stream().mapToInt(Action::count).sum();
        String message =
                "%s says %d of '%s', its action%s %d."
                        .formatted(
                                facts.phrases().step(step.id()),
                                said.number(),
                                facts.phrases().name(item),
                                actionsOn(step, item).size() == 1 ? " counts" : "s count",
                                count);
        return about().finding(Phrases.sentence(message), List.of(step.id()), List.of(item));
    }

    private static List<Action> actionsOn(Step step, ItemId item) {
        return step.actions().stream()
                .filter(action -> action.item().filter(item::equals).isPresent())
                .toList();
    }

    @Override
    public Stream<Fix> fixes(Facts facts, Finding finding) {
        Step step = facts.index().step(finding.steps().get(0));
        Item item = facts.index().item(finding.items().get(0));
        List<Action> actions = actionsOn(step, item.id());
        Vocabulary words = facts.wording().vocabulary().orElseThrow();
        if (actions.size() != 1) {
            return Stream.empty();
        }
        Counted title = new Counted(facts.index(), step, titleOf(step, words), words);
        Counted text = new Counted(facts.index(), step, facts.wording().sentences(step), words);
        int said = said(title, text, item.id()).number();
        Stream<Fix> count =
                said == item.quantity()
                        ? Stream.of(counted(step, actions.get(0), said))
                        : Stream.empty();
        return Stream.concat(
                count, written(step, actions.get(0).count(), title, text, item.id(), words));
    }

    private static Fix counted(Step step, Action action, int count) {
        List<Action> actions = new ArrayList<>(step.actions());
        actions.set(actions.indexOf(action), action.draft().count(count).action());
        String name = "Set to " + count;
        return new Fix(name, new ChangeStep(step.draft().actions(actions).step(), name));
    }

    /** Writes the action's count where a single other number stands for it. */
    private static Stream<Fix> written(
            Step step, int count, Counted title, Counted text, ItemId item, Vocabulary words) {
        Optional<String> newTitle = exchanged(step.title(), count, title, item, words);
        Optional<String> newText = exchanged(step.text(), count, text, item, words);
        if (newTitle.isEmpty() || newText.isEmpty()) {
            return Stream.empty();
        }
        String name = "Write '" + inStyleOf(said(title, text, item), count, words) + "'";
        Step changed = step.draft().title(newTitle.get()).text(newText.get()).step();
        return Stream.of(new Fix(name, new ChangeStep(changed, name)));
    }

    private static Optional<String> exchanged(
            String before, int count, Counted read, ItemId item, Vocabulary words) {
        if (!read.differing().contains(item)) {
            return Optional.of(before);
        }
        List<Token> numbers = read.numbers(item);
        Rewriting text = new Rewriting(before);
        for (Token number : numbers) {
            text.exchange(number, inStyleOf(number, count, words));
        }
        return numbers.size() == 1 ? text.result() : Optional.empty();
    }

    /** In figures where the other number is in figures. */
    private static String inStyleOf(Token old, int count, Vocabulary words) {
        boolean figures = Character.isDigit(old.text().charAt(0));
        return figures ? Integer.toString(count) : words.numbers().written(count);
    }
}
