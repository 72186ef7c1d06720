package counterstep.find;

import counterstep.model.Action;
import counterstep.model.Hazard;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.words.NamedSteps;
import counterstep.words.Vocabulary;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Keeps texts true that name a step by its number: when steps get other numbers, 'until step 4 is
 * done' goes on to name the step that it named. How far a step has been tried stays as it is, since
 * it says what it said.
 */
public final class StepNumbers {
    private StepNumbers() {}

    /**
     * The document after a change, with the numbers in its texts following their steps. Texts that
     * the change itself wrote stay as they are, and so does a number that there was no step for.
     */
    public static Procedure follow(Procedure before, Procedure after) {
        Map<String, String> changed = changed(before, after);
        Optional<Vocabulary> words = Vocabulary.of(after.titleBlock().language());
        if (changed.isEmpty() || words.isEmpty()) {
            return after;
        }
        Map<StepId, Step> old = new HashMap<>();
        before.steps().forEach(step -> old.put(step.id(), step));
        NamedSteps named = words.get().namedSteps();
        UnaryOperator<String> number = each -> changed.getOrDefault(each, each);
        UnaryOperator<String> renumbered = text -> named.renumbered(text, number);
        return after.draft()
                .steps(
                        after.steps().stream()
                                .map(
                                        step ->
                                                saysTheSame(step, old.get(step.id()))
                                                        ? renumbered(step, renumbered)
                                                        : step)
                                .toList())
                .procedure();
    }

    /** The numbers that name another step now, each with what names it today. */
    private static Map<String, String> changed(Procedure before, Procedure after) {
        Map<StepId, Integer> now = new HashMap<>();
        after.steps().forEach(step -> now.put(step.id(), now.size() + 1));
        Map<String, String> changed = new HashMap<>();
        int number = 0;
        for (Step step : before.steps()) {
            number++;
            Integer newer = now.get(step.id());
            if (newer == null || newer != number) {
                changed.put(
                        Integer.toString(number),
                        newer == null ? NamedSteps.GONE : Integer.toString(newer));
            }
        }
        return changed;
    }

    private static boolean saysTheSame(Step step, Step old) {
        return old != null
                && step.title().equals(old.title())
                && step.text().equals(old.text())
                && step.spoken().equals(old.spoken())
                && step.actions().equals(old.actions())
                && step.hazards().equals(old.hazards());
    }

    private static Step renumbered(Step step, UnaryOperator<String> text) {
        List<Action> actions = step.actions().stream().map(each -> in(each, text)).toList();
        List<Hazard> hazards = step.hazards().stream().map(each -> in(each, text)).toList();
        return step.draft()
                .title(text.apply(step.title()))
                .text(text.apply(step.text()))
                .spoken(text.apply(step.spoken()))
                .actions(actions)
                .hazards(hazards)
                .step();
    }

    private static Action in(Action action, UnaryOperator<String> text) {
        return action.remark().isEmpty()
                ? action
                : action.draft().remark(text.apply(action.remark())).action();
    }

    private static Hazard in(Hazard hazard, UnaryOperator<String> text) {
        return new Hazard(
                hazard.signal(),
                text.apply(hazard.hazard()),
                text.apply(hazard.consequence()),
                text.apply(hazard.avoidance()),
                hazard.items(),
                hazard.extras());
    }
}
