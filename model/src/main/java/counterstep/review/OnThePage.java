package counterstep.review;

import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.check.Phrases;
import counterstep.check.StateWords;
import counterstep.ledger.Happening;
import counterstep.ledger.ItemState;
import counterstep.ledger.NoState;
import counterstep.model.Index;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.review.HowItGoesWrong.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Tells a finding that shows in page order: up to where one follows the page, and what is then. */
final class OnThePage {
    private static final String NOTE = "so it is on the page";
    private static final int MOST_ITEMS = 3;

    private final Facts facts;
    private final Index index;
    private final Finding finding;
    private final List<Item> items;
    private final List<StepId> steps;
    private final List<Line> lines = new ArrayList<>();

    OnThePage(Facts facts, Finding finding) {
        this.facts = facts;
        this.index = facts.index();
        this.finding = finding;
        this.items =
                finding.items().stream()
                        .flatMap(item -> index.findItem(item).stream())
                        .limit(MOST_ITEMS)
                        .toList();
        this.steps =
                finding.steps().stream().filter(step -> index.findStep(step).isPresent()).toList();
    }

    HowItGoesWrong told() {
        if (steps.isEmpty()) {
            return plain();
        }
        if (AllChecks.completeness().has(finding.check())) {
            return atTheEnd();
        }
        boolean starts =
                AllChecks.order().has(finding.check()) || AllChecks.safety().has(finding.check());
        return starts ? whenItStarts() : whereItStands();
    }

    /** Nothing to follow: the document as a whole is at fault. */
    private HowItGoesWrong plain() {
        return told(List.of(new Line(finding.message(), List.of(), 0, true)), 0, Optional.empty());
    }

    /** The last step that acts on the items leaves them so, and nothing later mends it. */
    private HowItGoesWrong atTheEnd() {
        int last = lastTouch(pages());
        if (last >= 0) {
            StepId step = stepAt(last);
            follow(step, states(item -> facts.ledger().after(item, step)));
        }
        if (last < pages() - 1) {
            String on = last < 0 ? "follow the page to its end" : "go on to the end of the page";
            lines.add(new Line(on, List.of(), pages(), false));
        }
        lines.add(new Line(atEnd(), List.of(), pages(), true));
        return told(lines, pages(), Optional.empty());
    }

    private String atEnd() {
        String unfinished =
                items.stream()
                        .map(item -> unfinished(item, facts.ledger().atEnd(item.id())))
                        .filter(words -> !words.isEmpty())
                        .collect(Collectors.joining(", "));
        return unfinished.isEmpty() ? finding.message() : "at the end: " + unfinished;
    }

    private static String unfinished(Item item, ItemState state) {
        return state.finished() ? "" : stateOf(item, state);
    }

    private static String stateOf(Item item, ItemState state) {
        return item.name() + " " + StateWords.of(item, state);
    }

    /** What the step finds when it starts is not as it must be. */
    private HowItGoesWrong whenItStarts() {
        StepId fails = steps.get(0);
        int page = index.page(fails);
        if (page > 0) {
            StepId before = stepAt(page - 1);
            follow(before, states(item -> facts.ledger().after(item, before)));
        } else if (!items.isEmpty()) {
            lines.add(
                    new Line("as found: " + states(facts.ledger()::atStart), List.of(), 0, false));
        }
        lines.add(wrongAt(fails, page));
        return told(lines, page, Optional.of(fails));
    }

    /** It is so when the step is done, or in its words. */
    private HowItGoesWrong whereItStands() {
        StepId at = steps.get(0);
        int page = index.page(at);
        follow(at, states(item -> facts.ledger().after(item, at)));
        lines.add(wrongAt(at, page + 1));
        return told(lines, page, Optional.of(at));
    }

    private void follow(StepId to, String states) {
        String how =
                index.page(to) == 0 ? "do step 1" : "follow the page to step " + index.number(to);
        lines.add(
                new Line(
                        how + StepNames.title(index, to) + (states.isEmpty() ? "" : ": " + states),
                        List.of(to),
                        index.number(to),
                        false));
    }

    private Line wrongAt(StepId step, int done) {
        return new Line(finding.message(), List.of(step), done, true);
    }

    private String states(Function<ItemId, ItemState> state) {
        return Phrases.list(
                items.stream()
                        .filter(item -> state.apply(item.id()) != NoState.NONE)
                        .map(item -> stateOf(item, state.apply(item.id())))
                        .toList());
    }

    private HowItGoesWrong told(List<Line> told, int done, Optional<StepId> fails) {
        List<StepId> order =
                facts.procedure().steps().subList(0, done).stream().map(Step::id).toList();
        return new HowItGoesWrong(told, order, fails, NOTE);
    }

    /** Page of the last action on the items before a page; -1 where there is none. */
    private int lastTouch(int before) {
        return items.stream()
                .flatMap(item -> facts.ledger().happenings(item.id()).stream())
                .map(Happening::step)
                .mapToInt(index::page)
                .filter(page -> page < before)
                .max()
                .orElse(-1);
    }

    private StepId stepAt(int page) {
        return facts.procedure().steps().get(page).id();
    }

    private int pages() {
        return facts.procedure().steps().size();
    }
}
